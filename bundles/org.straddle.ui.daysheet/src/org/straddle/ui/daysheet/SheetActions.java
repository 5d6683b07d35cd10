package org.straddle.ui.daysheet;

import java.util.function.Consumer;

import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.actions.ActionFactory;
import org.straddle.daysheet.layout.Sight;
import org.straddle.ui.parts.KeyedActs;
import org.straddle.words.Catalogue;

/** Toolbar, view menu and keys of the view. */
final class SheetActions {

    private static final Catalogue TEXTS = Catalogue.of(SheetActions.class);

    static final String CONTEXT = "org.straddle.ui.daysheet.context";

    private final SheetCanvas sheet;
    private final KeyedActs acts;

    SheetActions(IViewSite site, SheetCanvas sheet) {
        this.sheet = sheet;
        this.acts = new KeyedActs(SheetActions.class, site);
        IAction in = moving("zoomIn", TEXTS.text("sheetActions.zoom"), TEXTS.text("sheetActions.largerAlsoCtrl"), s -> s.zoom(true));
        IAction out = moving("zoomOut", TEXTS.text("sheetActions.zoomOut"), TEXTS.text("sheetActions.smallerAlsoCtrl"), s -> s.zoom(false));
        IAction all = moving("fitAll", TEXTS.text("sheetActions.allDays"), TEXTS.text("sheetActions.showAllDays"), Sight::fitAll);
        IAction day = moving("fitDay", TEXTS.text("sheetActions.oneDay"), TEXTS.text("sheetActions.showDayWhat"),
                this::day);
        IAction hour = moving("oneHour", TEXTS.text("sheetActions.oneHour"), TEXTS.text("sheetActions.showOneHour"), this::hour);
        IAction picture = acts.of("picture", TEXTS.text("sheetActions.saveAsPicture"), TEXTS.text("sheetActions.saveTimeSight"), () -> {
            if (sheet.sheet().isPresent()) {
                PictureFile.export(site.getShell(), sheet);
            }
        });
        IAction pdf = acts.of("pdf", TEXTS.text("sheetActions.savePdf"), TEXTS.text("sheetActions.allDaysPaper"),
                () -> sheet.sheet().ifPresent(shown -> PaperFile.export(site.getShell(), sheet, shown)));
        IAction print = acts.boundTo("org.eclipse.ui.file.print", acts.act("print", TEXTS.text("sheetActions.print"),
                TEXTS.text("sheetActions.allDaysPaper"),
                () -> sheet.sheet().ifPresent(shown -> PaperPrint.print(site.getShell(), sheet, shown))));
        site.getActionBars().setGlobalActionHandler(ActionFactory.PRINT.getId(), print);
        IAction legend = legend();
        IActionBars bars = site.getActionBars();
        fill(bars.getToolBarManager(), in, out, all, day, hour, print);
        IMenuManager menu = bars.getMenuManager();
        for (IAction action : new IAction[] {in, out, all, day, hour}) {
            menu.add(action);
        }
        menu.add(new Separator());
        menu.add(legend);
        menu.add(picture);
        menu.add(pdf);
        menu.add(print);
    }

    private static void fill(IToolBarManager bar, IAction in, IAction out, IAction all, IAction day, IAction hour,
            IAction print) {
        bar.add(in);
        bar.add(out);
        bar.add(new Separator());
        bar.add(all);
        bar.add(day);
        bar.add(hour);
        bar.add(new Separator());
        bar.add(print);
    }

    private void day(Sight sight) {
        sight.fit(sheet.selected().map(item -> sight.day(item.window().start())).orElseGet(sight::day));
    }

    private void hour(Sight sight) {
        sight.hour(sheet.selected().map(item -> item.window().start()).orElse(sight.middle()));
    }

    private IAction legend() {
        return acts.of("legend", TEXTS.text("sheetActions.legendMoreNone"), TEXTS.text("sheetActions.showWhatDrawings"), () -> sheet.legend(sheet.legend().next()));
    }

    private IAction moving(String name, String text, String tip, Consumer<Sight> motion) {
        return acts.of(name, text, tip, () -> {
            if (sheet.sheet().isPresent()) {
                motion.accept(sheet.sight());
                sheet.changed();
            }
        });
    }
}
