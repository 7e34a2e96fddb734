package org.coursewright.core.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.core.geometry.MeetingEnd;
import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallMeeting;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;

/** Tells the walls of one storey how their ends meet, and gathers the meetings in which walls take turns. */
final class StoreyMeetings {

    private final Map<String, WallPlan> plans;
    private final HandingChoices choices;
    private final MeetingFindings findings;
    private final List<Meeting> meetings = new ArrayList<>();
    private final List<Abutment> abutments = new ArrayList<>();

    StoreyMeetings(Map<String, WallPlan> plans, HandingChoices choices, MeetingFindings findings) {
        this.plans = plans;
        this.choices = choices;
        this.findings = findings;
    }

    /** @return the meetings read so far in which walls take turns to run through */
    List<Meeting> meetings() {
        return List.copyOf(meetings);
    }

    /** @return where walls end against the side of others and are tied to them, as far as read */
    List<Abutment> abutments() {
        return List.copyOf(abutments);
    }

    void read(WallMeeting meeting) {
        if (!meeting.square()) {
            findings.skew(walls(meeting));
        }
        switch (meeting.kind()) {
            case FREE -> {
                /* walls end in the open unless told otherwise */ }
            case CORNER -> readCorner(meeting);
            case INLINE -> readInLine(meeting.ends(), meeting);
            case TEE, CROSS -> readTees(meeting);
        }
    }

    /** The first two walls take turns; any further one stops at their near faces already. */
    private void readCorner(WallMeeting meeting) {
        MeetingEnd first = meeting.ends().get(0);
        MeetingEnd second = meeting.ends().get(1);
        String id = name(first) + " / " + name(second);
        meet(first, new WallEnd.Corner(id, setback(first, second, meeting), plan(first).levelsBeside(plan(second),
                second.place())));
        meet(second, new WallEnd.Corner(id, setback(second, first, meeting), plan(second).levelsBeside(plan(first),
                first.place())));
        meeting.ends().stream().skip(2).forEach(end -> meet(end, new WallEnd.Tied()));
        WallPlan one = plan(first);
        WallPlan other = plan(second);
        meetings.add(new Meeting(id, Meeting.Kind.CORNER, List.of(one.mark(), other.mark()),
                choices.throughOnOdd(List.of(one.wall(), other.wall()))));
        if (!one.coursesWith(other)) {
            findings.coursesDiffer(walls(meeting), one, other);
        }
    }

    /**
     * How far from its outer end a wall begins where the other runs through: at a square corner the other's thickness, at
     * a skew one what the other takes along this wall, twice the way from the corner of the centre lines to the outer one.
     */
    private Length setback(MeetingEnd end, MeetingEnd other, WallMeeting meeting) {
        if (meeting.square()) {
            return plan(other).body().thickness();
        }
        WallPlan wall = plan(end);
        Length extension = end.place() == Place.START ? wall.faces().startExtension() : wall.faces().endExtension();
        return extension.signum() > 0 ? extension.times(2) : plan(other).body().thickness();
    }

    /** Two ends in one line: the first keeps its face, the second begins with a joint in every course. */
    private void readInLine(List<MeetingEnd> ends, WallMeeting meeting) {
        meet(ends.get(1), new WallEnd.Tied());
        findings.inLine(walls(meeting));
    }

    private void readTees(WallMeeting meeting) {
        Optional<MeetingEnd> bar = meeting.ends().stream().filter(end -> end.place() == Place.ALONG).findFirst();
        if (bar.isEmpty()) {
            readSplitBar(meeting);
            return;
        }
        meeting.ends().stream().filter(end -> end.place() != Place.ALONG).forEach(stem -> readTee(stem, bar.get()));
    }

    /** A bar drawn as two walls: nothing can run through it, so all but the first end with a joint. */
    private void readSplitBar(WallMeeting meeting) {
        meeting.ends().stream().skip(1).forEach(end -> meet(end, new WallEnd.Tied()));
        findings.splitBar(walls(meeting));
    }

    private void readTee(MeetingEnd stemEnd, MeetingEnd barEnd) {
        WallPlan stem = plan(stemEnd);
        WallPlan bar = plan(barEnd);
        if (!choices.isBonded(stem.wall(), bar.wall())) {
            tie(stemEnd, barEnd, new WallEnd.Tied(stem.levelsBeside(bar, middle(barEnd))));
            findings.tied(stem, bar);
            return;
        }
        if (!stem.coursesWith(bar)) {
            findings.coursesDiffer(List.of(stem.wall(), bar.wall()), stem, bar);
            tie(stemEnd, barEnd, new WallEnd.Tied());
            return;
        }
        bond(stemEnd, stem, barEnd, bar);
    }

    /** Where along the bar, from its outer start face, the stem's centre line ends. */
    private Length middle(MeetingEnd barEnd) {
        return barEnd.along().plus(plan(barEnd).faces().startExtension());
    }

    private void bond(MeetingEnd stemEnd, WallPlan stem, MeetingEnd barEnd, WallPlan bar) {
        String id = name(stemEnd) + " in " + bar.mark();
        Length middle = middle(barEnd);
        meet(stemEnd, new WallEnd.Bonded(id, bar.body().thickness(), stem.levelsBeside(bar, middle)));
        meetings.add(new Meeting(id, Meeting.Kind.TEE, List.of(stem.mark(), bar.mark()),
                choices.throughOnOdd(List.of(stem.wall(), bar.wall()))));
        Length from = near(stem, middle);
        int raise = Math.toIntExact(stem.lines().base().minus(bar.lines().base()).units()
                / bar.lines().courseHeight().units());
        int last = stem.lines().wholeCoursesBelow(stem.top().highest()) + raise;
        if (last >= 1) {
            bar.isCrossedBy(new Obstacle(Obstacle.Kind.TEE, stem.mark(), from, from.plus(stem.body().thickness()),
                    Math.max(1, raise + 1), last, Optional.of(id)));
        }
    }

    private void tie(MeetingEnd stemEnd, MeetingEnd barEnd, WallEnd.Tied how) {
        meet(stemEnd, how);
        WallPlan stem = plan(stemEnd);
        Length from = near(stem, middle(barEnd));
        abutments.add(new Abutment(barEnd.mark(), from, from.plus(stem.body().thickness())));
    }

    /** Where along the bar the stem's nearer side is. */
    private static Length near(WallPlan stem, Length middle) {
        return middle.minus(Length.ofUnits(stem.body().thickness().units() / 2));
    }

    private void meet(MeetingEnd end, WallEnd how) {
        if (end.place() == Place.START) {
            plan(end).startsWith(how);
        } else {
            plan(end).endsWith(how);
        }
    }

    private WallPlan plan(MeetingEnd end) {
        return plans.get(end.mark());
    }

    private static String name(MeetingEnd end) {
        return end.mark() + (end.place() == Place.START ? " start" : " end");
    }

    private List<Wall> walls(WallMeeting meeting) {
        return meeting.ends().stream().map(this::plan).map(WallPlan::wall).toList();
    }
}
