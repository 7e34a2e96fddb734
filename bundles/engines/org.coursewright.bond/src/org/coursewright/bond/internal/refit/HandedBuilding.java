package org.coursewright.bond.internal.refit;

import java.util.List;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.building.Handed;
import org.coursewright.bond.internal.building.HandingSearch;
import org.coursewright.bond.internal.building.Layings;
import org.coursewright.bond.internal.building.RequestCheck;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.measure.Progress;

/**
 * A building that is handed and laid, for asking what its walls would come to if they were changed. What has been laid
 * once is not laid again. Not safe for use from several threads at once.
 */
public final class HandedBuilding {

    private final BondRequest request;
    private final Layings layings;
    private final Handed handed;

    private HandedBuilding(BondRequest request, Layings layings, Progress progress) {
        this.request = request;
        this.layings = layings;
        handed = new HandingSearch(request, layings).search(progress);
    }

    /**
     * Hands and lays a building.
     *
     * @param layings may take over what has been laid of it; remember what is laid now
     * @return that building
     */
    public static HandedBuilding of(BondRequest request, Layings layings, Progress progress) {
        RequestCheck.check(request);
        HandedBuilding building = new HandedBuilding(request, layings, progress);
        layings.borrowNoMore();
        return building;
    }

    /** @return how it is laid */
    public BondResult result() {
        return handed.result();
    }

    /**
     * The same building with other walls, handed afresh.
     *
     * @param walls for those of the same marks, in the same order
     * @return that building
     */
    public HandedBuilding with(List<WallFace> walls, Progress progress) {
        BondRequest changed = new BondRequest(walls, request.meetings());
        RequestCheck.check(changed);
        return new HandedBuilding(changed, layings, progress);
    }

    /** @return what was laid */
    public BondRequest request() {
        return request;
    }

    /** @return the runs of a wall, handed as in this building */
    public FaceRuns runs(WallFace wall) {
        return FaceRuns.of(wall, handed.handing(), new RefitMemory(Masonry.of(wall.stock(), wall.rule())));
    }

    /**
     * How a wall so laid can be fitted to changes of its dimensions.
     *
     * @param runs of the wall, handed as in this building
     * @param layout of that wall, so handed
     * @return what can be fitted
     */
    public RefitWall refit(FaceRuns runs, WallLayout layout) {
        return RefitWall.of(runs, layout);
    }

    /** @return the wall laid soon, handed as in this building: perhaps not as well as it can be */
    public WallLayout laySoon(WallFace wall, Progress progress) {
        return layings.laySoon(wall, handed.handing(), progress);
    }

    /**
     * Lays a wall as far as its cuts can be proven without a finer bound, which takes the longer part of laying it.
     *
     * @return the wall so laid, handed as in this building; with all care if that has been done before
     */
    public WallLayout layAsKnown(WallFace wall, Progress progress) {
        return layings.layAsKnown(wall, handed.handing(), progress);
    }

    /** @return the wall laid with all care, handed as in this building */
    public WallLayout lay(WallFace wall, Progress progress) {
        return layings.layBetter(wall, handed.handing(), progress);
    }
}
