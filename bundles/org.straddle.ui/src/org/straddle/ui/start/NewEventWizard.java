package org.straddle.ui.start;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.start.EventStart;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.ui.folder.LeaveEvent;
import org.straddle.ui.folder.OpenEvent;
import org.straddle.ui.start.NewEventDraft.Lines;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/**
 * The way to a new event: what it is called, then who goes, where and with which birds. Every step but the first may be
 * left for later; nothing is on the disk before the last button.
 */
public final class NewEventWizard extends Wizard {

    private static final Catalogue TEXTS = Catalogue.of(NewEventWizard.class);

    private static final int WIDTH = 880;
    private static final int HEIGHT = 330;

    private final NewEventDraft draft = new NewEventDraft();

    private NewEventWizard() {
        setWindowTitle(TEXTS.text("newEventWizard.title"));
    }

    public static void ask(Shell shell) {
        if (!LeaveEvent.ask()) {
            return;
        }
        WizardDialog dialog = new WizardDialog(shell, new NewEventWizard()) {
            @Override
            protected void createButtonsForButtonBar(Composite parent) {
                super.createButtonsForButtonBar(parent);
                Button make = getButton(IDialogConstants.FINISH_ID);
                make.setText(TEXTS.text("newEventWizard.make"));
                setButtonLayoutData(make);
            }
        };
        dialog.setPageSize(WIDTH, HEIGHT);
        dialog.open();
    }

    @Override
    public void addPages() {
        addPage(new EventPage(draft));
        addPage(new LinesPage(draft, Lines.BASES, EventStart::readBases, TEXTS.text("newEventWizard.bases"),
                TEXTS.text("newEventWizard.bases.description"), TEXTS.text("newEventWizard.bases.example")));
        addPage(new LinesPage(draft, Lines.OPERATORS, EventStart::readOperators, TEXTS.text("newEventWizard.operators"),
                TEXTS.text("newEventWizard.operators.description"), TEXTS.text("newEventWizard.operators.example")));
        addPage(new LinesPage(draft, Lines.TEAMS, EventStart::readTeams, TEXTS.text("newEventWizard.teams"),
                TEXTS.text("newEventWizard.teams.description"), TEXTS.text("newEventWizard.teams.example")));
        addPage(new SitesPage(draft));
        addPage(new BirdsPage(draft));
        addPage(new LinesPage(draft, Lines.DEMAND, EventStart::readDemand, TEXTS.text("newEventWizard.demand"),
                TEXTS.text("newEventWizard.demand.description"), TEXTS.text("newEventWizard.demand.example")));
        addPage(new MissingPage(draft));
    }

    @Override
    public boolean performFinish() {
        EventStart start = draft.start();
        EventFolderException[] withoutBirds = new EventFolderException[1];
        boolean made = OpenEvent.open(getShell(), TEXTS.text("newEventWizard.making", "folder", draft.folder.getFileName()), () -> {
            EventFolder folder = start.create(draft.folder);
            try {
                start.bringElements(folder);
            } catch (EventFolderException failure) {
                withoutBirds[0] = failure;
            }
            return folder;
        });
        if (withoutBirds[0] != null) {
            Problem.show(getShell(), withoutBirds[0].getMessage(), withoutBirds[0]);
        }
        return made;
    }

    @Override
    public boolean performCancel() {
        return !draft.isBegun() || MessageDialog.open(MessageDialog.QUESTION, getShell(), TEXTS.text("newEventWizard.title"),
                TEXTS.text("newEventWizard.drop"), SWT.NONE, TEXTS.text("newEventWizard.drop.yes"),
                TEXTS.text("newEventWizard.drop.no")) == 0;
    }
}
