package org.coursewright.layout.ui.handing;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.WallHanding;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.edit.command.ProjectCommand;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.osgi.util.NLS;

/**
 * Lets somebody decide which wall runs through at the corners of a wall.
 *
 * @param wall of a project
 * @param laid how the building is laid
 * @param execute makes an edit
 */
public record HandingMenu(Wall wall, LayoutOutcome laid, Consumer<ProjectCommand> execute) {

    /** @param menu that gets an entry for each end where the wall takes turns with another */
    public void addTo(IMenuManager menu) {
        for (WallPlace place : List.of(WallPlace.START, WallPlace.END)) {
            at(place).ifPresent(handing -> menu.add(submenu(handing, place)));
        }
    }

    /**
     * Decides the next of what can be decided: one wall, the other, and none of them.
     *
     * @param place start or end of the wall; where it takes turns with none, nothing happens
     */
    public void next(WallPlace place) {
        at(place).ifPresent(handing -> {
            List<String> rivals = handing.rivals();
            int now = handing.isPinned() ? rivals.indexOf(handing.throughOnOdd()) : -1;
            choose(handing, now + 1 < rivals.size() ? Optional.of(rivals.get(now + 1)) : Optional.empty());
        });
    }

    private Optional<WallHanding> at(WallPlace place) {
        return WallHanding.at(laid, wall.getMark(), place);
    }

    private IMenuManager submenu(WallHanding handing, WallPlace place) {
        String other = handing.rivals().stream().filter(mark -> !mark.equals(wall.getMark())).findFirst().orElse("");
        String title = place == WallPlace.START ? HandingText.atStart : HandingText.atEnd;
        MenuManager menu = new MenuManager(NLS.bind(title, wall.getMark(), other));
        menu.add(choice(HandingText.leave, !handing.isPinned(), () -> choose(handing, Optional.empty())));
        handing.rivals().forEach(mark -> menu.add(choice(NLS.bind(HandingText.runsThrough, mark),
                handing.isPinned() && handing.throughOnOdd().equals(mark), () -> choose(handing, Optional.of(mark)))));
        return menu;
    }

    private static IAction choice(String text, boolean chosen, Runnable run) {
        Action action = new Action(text, IAction.AS_RADIO_BUTTON) {

            @Override
            public void run() {
                if (isChecked()) {
                    run.run();
                }
            }
        };
        action.setChecked(chosen);
        return action;
    }

    private void choose(WallHanding handing, Optional<String> through) {
        execute.accept(handing.choose((Building) wall.eContainer().eContainer(), through));
    }
}
