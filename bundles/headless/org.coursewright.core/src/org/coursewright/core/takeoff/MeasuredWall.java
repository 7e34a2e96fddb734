package org.coursewright.core.takeoff;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.core.bond.UnitCount;
import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.quantities.CourseQuantities;
import org.coursewright.takeoff.quantities.JointFill;
import org.coursewright.takeoff.quantities.PieceTally;
import org.coursewright.takeoff.quantities.TakeoffFigures;
import org.coursewright.takeoff.quantities.WallQuantities;

/**
 * One wall measured.
 *
 * @param brief what it is made of
 * @param face its area
 * @param quantities what it takes
 * @param fill how much of its joints is filled
 * @param length from outer face to outer face
 * @param bottoms of its courses above its base, each with its bed joint
 * @param tiedEnds how many of its ends are tied to other walls, 0 to 2
 */
public record MeasuredWall(WallBrief brief, WallFaceArea face, WallQuantities quantities, JointFill fill,
        Length length, List<Length> bottoms, int tiedEnds) {

    public MeasuredWall {
        bottoms = List.copyOf(bottoms);
    }

    WallTaken taken() {
        List<CourseMortar> mortar = new ArrayList<>();
        for (int i = 0; i < quantities.courses().size(); i++) {
            mortar.add(mortar(i));
        }
        return new WallTaken(brief.mark(), brief.unit().type(), brief.bond(), count(quantities.pieces()), face.line(),
                mortar);
    }

    private CourseMortar mortar(int index) {
        CourseQuantities course = quantities.courses().get(index);
        List<TakeoffLine> lines = TakeoffFigures
                .ofCourse(quantities.wall(), quantities.wall().courses().get(index), fill).stream()
                .map(figure -> TakeoffLines.of(quantities.wall().element(course.course()), figure.quantity(),
                        figure.trace()))
                .toList();
        return new CourseMortar(course.course(), cubicMetres(course.mortar().bed()),
                cubicMetres(course.mortar().head()), cubicMetres(course.mortar().besideCuts()),
                cubicMetres(course.mortar().net()), lines);
    }

    static UnitCount count(PieceTally pieces) {
        return new UnitCount(pieces.whole(), pieces.specialCount(), pieces.cutCount());
    }

    private static Quantity cubicMetres(Volume volume) {
        return volume.toQuantity(UnitCode.CUBIC_METRE);
    }
}
