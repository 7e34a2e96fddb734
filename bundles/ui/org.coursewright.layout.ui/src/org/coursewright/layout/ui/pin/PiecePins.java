package org.coursewright.layout.ui.pin;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Run;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.face.RunJoint;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.GaugePin;
import org.coursewright.model.building.PiecePin;
import org.coursewright.model.building.Pin;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.PinCommand;
import org.coursewright.model.edit.command.UnpinCommand;

/**
 * What can be fixed at a piece of a wall, and what is.
 *
 * @param wall of a project
 * @param piece as the wall is laid
 */
public record PiecePins(Wall wall, PlacedPiece piece) {

    /** @return pins of the run that the piece is part of */
    public List<Pin> inRun() {
        Run run = piece.run();
        return wall.getPins().stream().filter(pin -> pin.getCourse() == piece.course())
                .filter(pin -> isBetween(run.from(), pin.getAt(), run.to())).toList();
    }

    /** @return the edit that keeps the piece as it is */
    public PinCommand keepPiece() {
        PiecePin pin = BuildingFactory.eINSTANCE.createPiecePin();
        pin.setCourse(piece.course());
        pin.setAt(middle(piece.from(), piece.to()));
        pin.setLength(piece.piece().length());
        return new PinCommand(wall, pin, inRun().stream().filter(PiecePin.class::isInstance)
                .filter(each -> isBetween(piece.from(), each.getAt(), piece.to())).toList());
    }

    /**
     * @param joint of the whole run
     * @return the edit that keeps it
     */
    public PinCommand keepJoint(Length joint) {
        GaugePin pin = BuildingFactory.eINSTANCE.createGaugePin();
        pin.setCourse(piece.course());
        pin.setAt(middle(piece.from(), piece.to()));
        pin.setJoint(joint);
        return new PinCommand(wall, pin, inRun().stream().filter(GaugePin.class::isInstance).toList());
    }

    /** @return the edit that leaves the run to the layout */
    public UnpinCommand leave() {
        return new UnpinCommand(wall, inRun());
    }

    /** @return the joints of the run as they are laid, to the nearest 1/320 mm; empty if it has none */
    public Optional<Length> joint() {
        return RunJoint.of(piece.run());
    }

    private static boolean isBetween(Length from, Length at, Length to) {
        return at != null && !at.isLessThan(from) && at.isLessThan(to);
    }

    private static Length middle(Length from, Length to) {
        return Length.ofUnits((from.units() + to.units()) / 2);
    }
}
