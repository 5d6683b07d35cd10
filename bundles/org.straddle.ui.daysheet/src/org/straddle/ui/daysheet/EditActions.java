package org.straddle.ui.daysheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.actions.ActionFactory;
import org.straddle.daysheet.fits.Grip;
import org.straddle.model.Team;
import org.straddle.ui.parts.KeyedActs;
import org.straddle.words.Catalogue;

/** Keys, menu of the view and menu on the sheet for everything that changes the plan. */
final class EditActions {

    private static final Catalogue TEXTS = Catalogue.of(EditActions.class);

    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Duration FIVE = Duration.ofMinutes(5);

    // Menus of GTK show no keys with arrows, so these stand in the words.
    private final SheetCanvas sheet;
    private final SelectedEdits edits;
    private final KeyedActs acts;
    private final List<List<IAction>> groups = new ArrayList<>();
    private Optional<Instant> pointed = Optional.empty();
    private Optional<Team> pointedLane = Optional.empty();

    EditActions(IViewSite site, SheetCanvas sheet, SelectedEdits edits) {
        this.sheet = sheet;
        this.edits = edits;
        this.acts = new KeyedActs(EditActions.class, site);
        groups.add(List.of(
                action("earlier", TEXTS.text("editActions.moveEarlierMinute"), () -> edits.move(MINUTE.negated())),
                action("later", TEXTS.text("editActions.moveLaterMinute"), () -> edits.move(MINUTE)),
                action("muchEarlier", TEXTS.text("editActions.moveEarlierFive"), () -> edits.move(FIVE.negated())),
                action("muchLater", TEXTS.text("editActions.moveLaterFive"), () -> edits.move(FIVE)),
                action("previousPlace", TEXTS.text("editActions.placeBeforeFits"), () -> edits.toFitting(false)),
                action("nextPlace", TEXTS.text("editActions.nextPlaceFits"), () -> edits.toFitting(true))));
        groups.add(List.of(
                action("startEarlier", TEXTS.text("editActions.startEarlierCtrl"), () -> edits.stretch(Grip.START, MINUTE.negated())),
                action("startLater", TEXTS.text("editActions.startLaterCtrl"), () -> edits.stretch(Grip.START, MINUTE)),
                action("endEarlier", TEXTS.text("editActions.endEarlierShift"), () -> edits.stretch(Grip.END, MINUTE.negated())),
                action("endLater", TEXTS.text("editActions.endLaterShift"), () -> edits.stretch(Grip.END, MINUTE)),
                action("split", TEXTS.text("editActions.split"), () -> edits.split(pointed))));
        groups.add(List.of(
                action("previousTeam", TEXTS.text("editActions.handOverTeam"), () -> edits.handOver(-1)),
                action("nextTeam", TEXTS.text("editActions.handOverBelow"), () -> edits.handOver(1))));
        groups.add(List.of(
                action("pin", TEXTS.text("editActions.pinLetGo"), edits::pin),
                action("ban", TEXTS.text("editActions.ban"), () -> edits.ban(site.getShell()))));
        IAction delete = new Deed(TEXTS.text("editActions.delete"), edits::delete);
        delete.setActionDefinitionId("org.eclipse.ui.edit.delete");
        site.getActionBars().setGlobalActionHandler(ActionFactory.DELETE.getId(), delete);
        groups.add(List.of(
                action("addStop", TEXTS.text("editActions.addStOp"),
                        () -> edits.addStop(site.getShell(), pointedLane, pointed)),
                action("addTurn", TEXTS.text("editActions.addTurn"), () -> edits.addTurn(site.getShell())),
                delete));
        fill(site.getActionBars().getMenuManager());
        onSheet();
    }

    /** Forgets where the mouse was: what a key does has no place. */
    private void onSheet() {
        Canvas canvas = sheet.control();
        MenuManager menu = new MenuManager();
        fill(menu);
        canvas.setMenu(menu.createContextMenu(canvas));
        canvas.addListener(SWT.MenuDetect, this::detected);
        canvas.addListener(SWT.KeyDown, event -> forget());
        canvas.addListener(SWT.MouseDown, event -> {
            if (event.button == 3) {
                sheet.at(event.x, event.y).flatMap(SheetMouse::item).ifPresent(sheet::point);
            }
        });
    }

    private void forget() {
        pointed = Optional.empty();
        pointedLane = Optional.empty();
    }

    private void detected(Event event) {
        Canvas canvas = sheet.control();
        if (event.detail == SWT.MENU_MOUSE) {
            Point at = canvas.toControl(event.x, event.y);
            int x = at.x - sheet.gutter();
            pointed = sheet.sheet().map(shown -> Instant.ofEpochSecond(
                    Math.floorDiv(sheet.sight().scale().at(x).getEpochSecond() + 30, 60) * 60));
            pointedLane = sheet.layout().flatMap(laid -> laid.lanes().stream()
                    .filter(lane -> lane.strip().contains(at.x, at.y)).findFirst()).flatMap(lane -> lane.lane().team());
        } else {
            forget();
            sheet.selected().flatMap(sheet::place).ifPresent(box -> {
                Point at = canvas.toDisplay(box.x() + Math.min(8, box.width()), box.bottom());
                event.x = at.x;
                event.y = at.y;
            });
        }
    }

    private void fill(IMenuManager menu) {
        for (List<IAction> group : groups) {
            menu.add(new Separator());
            group.forEach(menu::add);
        }
    }

    private IAction action(String name, String text, Runnable run) {
        return acts.bound(name, new Deed(text, run));
    }

    private static final class Deed extends Action {

        private final Runnable run;

        Deed(String text, Runnable run) {
            super(text);
            this.run = run;
            setToolTipText(text.replace("&", ""));
        }

        @Override
        public void run() {
            run.run();
        }
    }
}
