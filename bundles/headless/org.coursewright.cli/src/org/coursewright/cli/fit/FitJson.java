package org.coursewright.cli.fit;

import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.JsonText;
import org.coursewright.core.fit.FitOutcome;
import org.coursewright.core.fit.FitProposal;
import org.coursewright.core.fit.FitSettings;
import org.coursewright.core.fit.Saving;
import org.coursewright.model.project.Project;

/** Writes advice as {@code coursewright.fit/1}, described in docs/formats/fit-json.md. */
final class FitJson {

    private static final String SCHEMA = "coursewright.fit/1";

    private final JsonText json;
    private final Map<Adjustable, DimensionProfile> profiles;

    private FitJson(JsonText json, FitOutcome outcome) {
        this.json = json;
        profiles = outcome.advice().profiles().stream()
                .collect(Collectors.toMap(DimensionProfile::adjustable, Function.identity()));
    }

    static String of(Project project, FitSettings settings, FitOutcome outcome) {
        return JsonText.document(SCHEMA, json -> new FitJson(json, outcome).write(project, settings, outcome));
    }

    private void write(Project project, FitSettings settings, FitOutcome outcome) {
        json.member("project", Optional.ofNullable(project.getName()).orElse(""));
        json.member("unit", "mm");
        settings.budget().ifPresent(budget -> json.member("budget", budget));
        json.member("movement", outcome.advice().movement());
        json.object("before", () -> write(outcome.advice().before()));
        json.object("after", () -> write(outcome.advice().after()));
        json.object("saved", () -> write(outcome.saving()));
        json.array("proposals", outcome.proposals(), proposal -> json.object(() -> write(proposal)));
        json.array("dimensions", outcome.advice().profiles(), profile -> json.object(() -> write(profile)));
        FindingText.write(outcome.findings(), json);
    }

    private void write(BondResult result) {
        json.member("cuts", result.cutPieces());
        json.member("lapViolations", result.lapViolations());
        json.member("unfillable", result.walls().stream().mapToLong(wall -> wall.unfillable().size()).sum());
        json.member("optimal", result.handingOptimal());
        json.member("lowerBound", result.lowerBound());
    }

    private void write(Saving saving) {
        json.member("cuts", saving.cuts());
        json.member("lapViolations", saving.laps());
        json.member("blocks", saving.blocks());
        json.member("blocksCutUp", saving.units().cutUp());
        json.member("specials", saving.units().specials());
        saving.minutes().ifPresent(minutes -> json.member("minutes", minutes.setScale(1, RoundingMode.HALF_UP)));
        saving.cost().ifPresent(cost -> {
            json.member("cost", cost.rounded().amount());
            json.member("currency", cost.currency().getCurrencyCode());
        });
    }

    private void write(FitProposal proposal) {
        Proposal change = proposal.change();
        write(change.adjustable());
        json.member("from", change.from());
        json.member("to", change.to());
        json.member("cutsBefore", change.cutsBefore());
        json.member("cutsAfter", change.cutsAfter());
        json.member("lapsBefore", change.lapsBefore());
        json.member("lapsAfter", change.lapsAfter());
        json.member("blocksCutUpBefore", proposal.before().cutUp());
        json.member("blocksCutUpAfter", proposal.after().cutUp());
        json.object("saved", () -> write(proposal.saving()));
        json.array("profile", profiles.get(change.adjustable()).points(),
                point -> json.object(() -> write(point, profiles.get(change.adjustable()))));
    }

    private void write(DimensionProfile profile) {
        write(profile.adjustable());
        json.member("planned", profile.planned());
        json.member("best", profile.planned().plus(profile.best()));
        json.array("profile", profile.points(), point -> json.object(() -> write(point, profile)));
    }

    private void write(Adjustable adjustable) {
        json.member("wall", adjustable.wall());
        adjustable.opening().ifPresent(opening -> json.member("opening", opening));
        json.member("dimension", adjustable.dimension().name().toLowerCase(Locale.ROOT));
    }

    private void write(ProfilePoint point, DimensionProfile profile) {
        json.member("value", profile.planned().plus(point.change()));
        json.member("cuts", point.cutPieces());
        json.member("lapViolations", point.lapViolations());
        json.member("unfillable", point.unfillable());
        json.member("leastCuts", point.leastCuts());
        json.member("basis", point.basis().name().toLowerCase(Locale.ROOT));
    }
}
