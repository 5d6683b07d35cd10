package org.straddle.ui.daysheet;

import java.util.Optional;

import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.daysheet.edit.Forbid;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Asks what of a stop or turn is banned, when, and why. */
final class BanDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(BanDialog.class);

    private final SheetItem item;
    private final Stop stop;
    private final Optional<Turn> turn;
    private boolean ofTeam;
    private boolean ofSite;
    private boolean ofBird;
    private boolean thenOnly = true;
    private boolean remove = true;
    private String reason = "";

    BanDialog(Shell parent, SheetItem item) {
        super(parent, TEXTS.text("banDialog.title"), TEXTS.text("banDialog.planWillDo"), TEXTS.text("banDialog.ban"), 1);
        this.item = item;
        this.turn = item.thing() instanceof Turn chosen ? Optional.of(chosen) : Optional.empty();
        this.stop = turn.map(chosen -> (Stop) chosen.eContainer()).orElseGet(() -> (Stop) item.thing());
        this.ofTeam = stop.getTeam() != null;
        this.ofSite = turn.isEmpty() && stop.getSite() != null;
        this.ofBird = turn.isPresent();
    }

    Optional<Forbid> ask() {
        return open() != Window.OK ? Optional.empty() : Optional.of(new Forbid(item.id(), ofTeam, ofSite, ofBird,
                thenOnly ? Optional.of(item.window()) : Optional.empty(), reason.strip(), remove));
    }

    @Override
    protected void fields(Composite body) {
        if (stop.getTeam() != null) {
            tick(body, TEXTS.text("banDialog.team",
                    "team", Naming.name(stop.getTeam())), ofTeam, ticked -> ofTeam = ticked);
        }
        if (stop.getSite() != null) {
            tick(body, TEXTS.text("banDialog.site",
                    "site", Naming.name(stop.getSite())), ofSite, ticked -> ofSite = ticked);
        }
        turn.map(Turn::getBird).ifPresent(bird -> tick(body, TEXTS.text("banDialog.bird",
                "bird", Naming.name(bird)), ofBird,
                ticked -> ofBird = ticked));
        tick(body, TEXTS.text("banDialog.only", "day", TimeText.utc().weekday(item.window().start()),
                "times", TimeText.zulu(item.window().start(), item.window().end())), thenOnly, ticked -> thenOnly = ticked);
        tick(body, TEXTS.text("banDialog.takeOutPlan"), remove, ticked -> remove = ticked);
        Text why = line(body, TEXTS.text("banDialog.why"), "", SWT.DEFAULT);
        why.setMessage(TEXTS.text("banDialog.breakdownClosedRoad"));
        why.addModifyListener(event -> reason = why.getText());
    }

    @Override
    protected boolean complete() {
        return ofTeam || ofSite || ofBird || thenOnly;
    }

    private interface Ticked {
        void is(boolean ticked);
    }

    private void tick(Composite body, String words, boolean at, Ticked ticked) {
        Button box = new Button(body, SWT.CHECK);
        box.setText(words);
        box.setSelection(at);
        box.addListener(SWT.Selection, event -> {
            ticked.is(box.getSelection());
            answered();
        });
    }
}
