package org.straddle.ui.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;
import org.straddle.exchange.ReadException;
import org.straddle.kit.table.KitTemplates;
import org.straddle.model.Kit;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.work.FileWork;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Makes kits from templates, and templates from kits. The user's own templates serve all events. */
final class TemplateDeeds {

    private static final Catalogue TEXTS = Catalogue.of(TemplateDeeds.class);

    private TemplateDeeds() {
    }

    /** One undo. */
    static void make(Shell shell, EventSession session, Team team) {
        if (team == null) {
            return;
        }
        List<KitTemplates.Template> all = new ArrayList<>();
        if (!FileWork.run(shell, TEXTS.text("template.reading"), () -> all.addAll(KitTemplates.ofUser().all()))) {
            return;
        }
        TemplateDialog dialog = new TemplateDialog(shell, all, session.event());
        if (dialog.open() != Window.OK) {
            return;
        }
        try {
            Command command = dialog.template().command(session.editingDomain(), session.event(), team, dialog.name());
            if (session.execute(command)) {
                session.reveal(team.getKits().get(team.getKits().size() - 1));
            }
        } catch (ReadException wrong) {
            Problem.show(shell, wrong.getMessage(), wrong);
        }
    }

    static void save(Shell shell, Team team) {
        Optional<Kit> kit = team == null ? Optional.empty() : kit(shell, team);
        if (kit.isEmpty()) {
            return;
        }
        InputDialog dialog = new InputDialog(shell, TEXTS.text("template.save"), TEXTS.text("template.save.ask"),
                Naming.name(kit.get()), text -> KitTemplates.problem(text).isEmpty() ? null : KitTemplates.problem(text));
        if (dialog.open() != Window.OK) {
            return;
        }
        KitTemplates templates = KitTemplates.ofUser();
        if (!templates.has(dialog.getValue()) || MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("template.save"),
                TEXTS.text("template.save.again", "name", dialog.getValue().strip()), SWT.NONE, TEXTS.text("template.save.replace"),
                TEXTS.text("template.save.keep")) == 0) {
            FileWork.run(shell, TEXTS.text("template.saving"), () -> templates.save(dialog.getValue(), kit.get()));
        }
    }

    /** Asks only where the team has several. */
    private static Optional<Kit> kit(Shell shell, Team team) {
        List<Kit> kits = team.getKits().stream().filter(kit -> !kit.eIsProxy()).toList();
        if (kits.size() < 2) {
            return kits.stream().findFirst();
        }
        ElementListSelectionDialog dialog = new ElementListSelectionDialog(shell, LabelProvider.createTextProvider(kit -> Naming.name((Kit) kit)));
        dialog.setTitle(TEXTS.text("template.save"));
        dialog.setMessage(TEXTS.text("template.save.which"));
        dialog.setElements(kits.toArray());
        return dialog.open() == Window.OK ? Optional.of((Kit) dialog.getFirstResult()) : Optional.empty();
    }
}
