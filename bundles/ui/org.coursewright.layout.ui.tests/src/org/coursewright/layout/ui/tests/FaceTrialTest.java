package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.strip.AdviceStrip;
import org.coursewright.layout.ui.strip.StripContent;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Opening;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An opening is dragged: the wall is laid anew on the way, and the strip says what each place needs. */
class FaceTrialTest {

    /** Pixels after which a press of the mouse becomes a drag. */
    private static final int FAR_ENOUGH = 8;

    @TempDir
    private Path folder;
    private OpenFace face;
    private Opening window;

    @BeforeEach
    void openTheWall() throws Exception {
        face = OpenFace.of(SmallHouse.in(folder), "W1");
        face.laid();
        window = face.opening("N1");
    }

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
    }

    @Test
    void wallIsLaidAnewWhileItsOpeningIsDraggedAndTheProjectStaysAsItIs() {
        Length before = window.getOffset();
        MouseOnOpening held = MouseOnOpening.inTheMiddle(face, window);
        held.drag(40);
        OpenFace.await(() -> held.shownOffset().isGreaterThan(before));

        assertEquals(before, window.getOffset());
        assertFalse(face.editor().isDirty());
        OpenFace.await(() -> Screen.labels().stream().anyMatch(text -> text.contains("Proven: no layout")
                || text.contains("Improved, not proven")));

        held.give();
        Length after = window.getOffset();
        assertEquals(held.shownOffset(), after);
        assertTrue(after.isGreaterThan(before));
        face.laid();
        assertEquals(after, held.shownOffset());

        OpenFace.active().ifPresent(ProjectSession::undo);
        assertEquals(before, window.getOffset());
    }

    @Test
    void dragThatIsGivenUpShowsTheWallAsItIs() {
        Length before = window.getOffset();
        MouseOnOpening held = MouseOnOpening.inTheMiddle(face, window);
        held.drag(40);
        OpenFace.await(() -> held.shownOffset().isGreaterThan(before));
        face.viewer().getEditDomain().setActiveTool(face.viewer().getEditDomain().getDefaultTool());
        OpenFace.await(() -> held.shownOffset().equals(before));

        assertEquals(before, window.getOffset());
        assertFalse(face.editor().isDirty());
    }

    @Test
    void placeThatTheMouseComesBackToIsShownAtOnce() {
        face.viewer().select(face.part(window));
        known();
        MouseOnOpening held = MouseOnOpening.inTheMiddle(face, window);
        held.drag(40);
        OpenFace.await(() -> held.shownOffset().equals(shownPlace()));
        Length before = held.shownOffset();
        held.drag(90);
        OpenFace.await(() -> held.shownOffset().equals(shownPlace()));
        assertNotEquals(before, held.shownOffset());

        held.move(40);
        assertEquals(before, held.shownOffset());
    }

    @Test
    void stripShowsCutsByPlaceForTheSelectedOpening() {
        face.viewer().select(face.part(window));
        PlaceCuts cuts = known();

        assertEquals(Optional.of("Window N1"), content().opening());
        assertTrue(cuts.points().size() > 30, () -> "places: " + cuts.points().size());
        ProfilePoint here = cuts.at(OpeningPlace.of(window)).orElseThrow();
        assertEquals(Basis.LAID, here.basis());
        assertEquals(face.laid().layout().cutPieces(), here.cutPieces());
        assertTrue(cuts.best().stream().allMatch(best -> best.cutPieces() < here.cutPieces()));
    }

    @Test
    void placeWithTheFewestCutsDrawsTheOpening() {
        face.viewer().select(face.part(window));
        Length best = nearestBest();
        int step = best.isGreaterThan(window.getOffset()) ? 1 : -1;
        MouseOnOpening held = MouseOnOpening.inTheMiddle(face, window);
        for (int by = step; !shownPlace().equals(best) && Math.abs(by) < 200; by += step) {
            held.drag(by);
        }
        held.give();

        assertEquals(best, window.getOffset());
    }

    @Test
    void clickOnTheStripBringsTheOpeningThere() {
        face.viewer().select(face.part(window));
        Length best = nearestBest();
        AdviceStrip strip = strip();
        for (int x = 0; x < strip.getSize().x && !window.getOffset().equals(best); x += 3) {
            if (hint(strip, x).startsWith(LengthFormat.INCHES.format(best) + " from")) {
                Screen.click(strip, x, strip.getSize().y / 2);
            }
        }

        assertEquals(best, window.getOffset());
        OpenFace.active().ifPresent(ProjectSession::undo);
        assertEquals(SmallHouse.inches("45"), window.getOffset());
    }

    @Test
    void farJambShowsCutsByWidthAndIsDrawnToTheWidthWithTheFewest() {
        dragTheJamb(MouseOnOpening.atTheFarJamb(face, window), OpeningGrip.FAR_JAMB);
    }

    @Test
    void nearJambShowsCutsByWidthAndIsDrawnToTheWidthWithTheFewest() {
        dragTheJamb(MouseOnOpening.atTheNearJamb(face, window), OpeningGrip.NEAR_JAMB);
    }

    /** Holds a jamb until the strip knows what each width needs, drags it to the nearest best one, and takes that back. */
    private void dragTheJamb(MouseOnOpening held, OpeningGrip grip) {
        OpeningPlace before = OpeningPlace.of(window);
        held.drag(FAR_ENOUGH);
        OpenFace.await(() -> content().cuts().filter(cuts -> cuts.grip() == grip && !cuts.goesOn()).isPresent());
        PlaceCuts cuts = known();
        OpeningPlace best = nearest(cuts, window);
        int step = grip.between(before, best).signum();
        for (int by = step; !content().at().orElseThrow().equals(best) && Math.abs(by) < 200; by += step) {
            held.drag(by);
        }
        OpeningPlace shown = content().at().orElseThrow();
        OpenFace.await(() -> held.shownWidth().equals(shown.width()));
        assertTrue(title().contains("%s: %d cut pieces".formatted(LengthFormat.INCHES.format(best.width()),
                cuts.at(best).orElseThrow().cutPieces())), FaceTrialTest::title);
        held.give();

        assertEquals(best, OpeningPlace.of(window));
        assertNotEquals(before, best);
        OpenFace.active().ifPresent(ProjectSession::undo);
        assertEquals(before, OpeningPlace.of(window));
    }

    /** What is to be read in the strip. */
    private static String title() {
        return strip().spoken();
    }

    private static String hint(AdviceStrip strip, int x) {
        Event event = new Event();
        event.x = x;
        event.y = strip.getSize().y / 2;
        strip.notifyListeners(SWT.MouseMove, event);
        return String.valueOf(strip.getToolTipText());
    }

    private Length nearestBest() {
        return nearest(known(), window).offset();
    }

    private static OpeningPlace nearest(PlaceCuts cuts, Opening opening) {
        return cuts.best().stream().map(cuts::place).min(Comparator.comparing(
                place -> cuts.grip().between(OpeningPlace.of(opening), place).abs())).orElseThrow();
    }

    /** Where the strip says that the opening is dragged to. */
    private Length shownPlace() {
        return content().at().map(OpeningPlace::offset).orElseThrow();
    }

    private PlaceCuts known() {
        OpenFace.await(() -> content().cuts().filter(cuts -> !cuts.goesOn()).isPresent());
        return content().cuts().orElseThrow();
    }

    private StripContent content() {
        return strip().content().orElseThrow();
    }

    private static AdviceStrip strip() {
        return Screen.all(AdviceStrip.class).findFirst().orElseThrow();
    }
}
