package org.coursewright.core.proposal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.coursewright.bond.advice.Adjustable;
import org.coursewright.core.fit.FitOutcome;
import org.coursewright.core.fit.FitProposal;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;
import org.coursewright.model.proposal.Dimension;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalFactory;
import org.coursewright.model.proposal.ProposalState;

/** Writes down what the advice found, for the architect to answer. */
public final class ProposalDrafts {

    private static final String MARK = "P";

    private final Project project;
    private final Set<String> marks = new HashSet<>();

    /** @param project that the advice is on; read on its editing thread */
    public ProposalDrafts(Project project) {
        this.project = project;
        project.getProposals().forEach(each -> marks.add(each.getMark()));
    }

    /**
     * @param outcome what the advice found
     * @param by who proposes it, may be empty
     * @param at when
     * @return new proposals in no project, in the order to make them; what has gone from the project meanwhile is left out
     */
    public List<Proposal> of(FitOutcome outcome, String by, Instant at) {
        List<Proposal> drafts = new ArrayList<>();
        for (FitProposal found : outcome.proposals()) {
            Adjustable adjustable = found.change().adjustable();
            walls().filter(wall -> adjustable.wall().equals(wall.getMark())).findFirst()
                    .filter(wall -> adjustable.opening().isEmpty() || opening(wall, adjustable).findFirst().isPresent())
                    .ifPresent(wall -> drafts.add(draft(found, wall, by, at)));
        }
        return drafts;
    }

    private Proposal draft(FitProposal found, Wall wall, String by, Instant at) {
        Adjustable adjustable = found.change().adjustable();
        Proposal draft = ProposalFactory.eINSTANCE.createProposal();
        draft.setMark(newMark());
        draft.setWall(wall);
        opening(wall, adjustable).findFirst().ifPresent(draft::setOpening);
        draft.setDimension(Dimension.valueOf(adjustable.dimension().name()));
        draft.setFrom(found.change().from());
        draft.setTo(found.change().to());
        draft.setReason(new SavingWords(found.saving()).text());
        draft.setState(ProposalState.OPEN);
        draft.setBy(by.isBlank() ? null : by);
        draft.setAt(at);
        return draft;
    }

    private String newMark() {
        int number = 1;
        while (!marks.add(MARK + number)) {
            number++;
        }
        return MARK + number;
    }

    private Stream<Wall> walls() {
        return project.getBuilding() == null
                ? Stream.empty()
                : project.getBuilding().getStoreys().stream().flatMap(storey -> storey.getWalls().stream());
    }

    private static Stream<Opening> opening(Wall wall, Adjustable adjustable) {
        return wall.getOpenings().stream()
                .filter(opening -> adjustable.opening().filter(mark -> mark.equals(opening.getMark())).isPresent());
    }
}
