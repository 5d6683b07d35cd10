package org.straddle.ui.safety;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IDialogSettings;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.FrameworkUtil;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.Verdict;
import org.straddle.model.naming.Naming;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.SignOff;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.work.OwnName;
import org.straddle.words.Catalogue;

/** Asks a reviewer for a verdict on a site and their name under it. */
final class SignOffDialog extends TitleAreaDialog {

    private static final Catalogue TEXTS = Catalogue.of(SignOffDialog.class);

    private static final String REVIEWER = "reviewer";

    private final IDialogSettings memory =
            PlatformUI.getDialogSettingsProvider(FrameworkUtil.getBundle(SignOffDialog.class)).getDialogSettings();
    private final Dates dates = new Dates();
    private final Site site;
    private final LocalDate visit;
    private final Policies policies;
    private final Map<Verdict, Button> verdicts = new EnumMap<>(Verdict.class);
    private SignOff signOff;
    private Text reviewer;
    private Text date;
    private Text expires;
    private Text conditions;
    private boolean ownExpiry;

    /** @param visit the day for which the site is looked at: a review of a later day would say nothing about it */
    SignOffDialog(Shell shell, Site site, LocalDate visit, LocalDate today, Policies policies) {
        super(shell);
        this.site = site;
        this.visit = visit;
        this.policies = policies;
        signOff = SignOff.on(today.isAfter(visit) ? visit : today, policies);
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setHelpAvailable(false);
    }

    /** What was entered when OK was pressed. */
    SignOff signOff() {
        return signOff;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(TEXTS.text("signOffDialog.title"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite body = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 10).applyTo(body);
        reviewer = field(body, TEXTS.text("signOffDialog.name"), Optional.ofNullable(memory.get(REVIEWER)).orElseGet(OwnName::last));
        verdict(body);
        conditions(body);
        date = field(body, TEXTS.text("signOffDialog.day"), dates.print(signOff.date()));
        expires = field(body, TEXTS.text("signOffDialog.last"), dates.print(signOff.expires()));
        reviewer.addModifyListener(change -> read());
        conditions.addModifyListener(change -> read());
        date.addModifyListener(change -> dateTyped());
        expires.addModifyListener(change -> {
            ownExpiry |= expires.isFocusControl();
            read();
        });
        setTitle(TEXTS.text("signOffDialog.heading", "site", Naming.name(site)));
        (reviewer.getText().isEmpty() ? reviewer : verdicts.get(signOff.verdict())).setFocus();
        return body;
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        read();
        return contents;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, TEXTS.text("signOffDialog.sign"), true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void okPressed() {
        memory.put(REVIEWER, signOff.reviewer().strip());
        OwnName.remember(signOff.reviewer());
        super.okPressed();
    }

    private Text field(Composite body, String name, String value) {
        new Label(body, SWT.NONE).setText(name);
        Text field = new Text(body, SWT.BORDER);
        field.setText(value);
        field.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        field.addFocusListener(FocusListener.focusGainedAdapter(gained -> field.selectAll()));
        return field;
    }

    private void verdict(Composite body) {
        new Label(body, SWT.NONE).setText(TEXTS.text("signOffDialog.verdict"));
        Composite choices = new Composite(body, SWT.NONE);
        choices.setLayout(new RowLayout(SWT.HORIZONTAL));
        Map<Verdict, String> names = Map.of(Verdict.GO_WITH_CARE, TEXTS.text("signOffDialog.go"), Verdict.ON_CONDITIONS,
                TEXTS.text("signOffDialog.on"), Verdict.DO_NOT_USE, TEXTS.text("signOffDialog.not"));
        for (Verdict verdict : Verdict.values()) {
            Button choice = new Button(choices, SWT.RADIO);
            choice.setText(names.get(verdict));
            choice.setSelection(verdict == signOff.verdict());
            choice.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen -> read()));
            verdicts.put(verdict, choice);
        }
    }

    private void conditions(Composite body) {
        Label name = new Label(body, SWT.NONE);
        name.setText(TEXTS.text("signOffDialog.conditions"));
        name.setLayoutData(new GridData(SWT.LEFT, SWT.TOP, false, false));
        conditions = new Text(body, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        GridData wide = new GridData(SWT.FILL, SWT.FILL, true, true);
        wide.heightHint = 4 * conditions.getLineHeight();
        wide.widthHint = 420;
        conditions.setLayoutData(wide);
        conditions.addTraverseListener(key -> key.doit |= key.detail == SWT.TRAVERSE_TAB_NEXT
                || key.detail == SWT.TRAVERSE_TAB_PREVIOUS);
    }

    /** Until somebody enters an expiry of their own, it follows the day of the review. */
    private void dateTyped() {
        LocalDate typed = day(date);
        if (!ownExpiry && typed != null) {
            expires.setText(dates.print(SignOff.lastDay(typed, policies)));
        }
        read();
    }

    private LocalDate day(Text field) {
        try {
            return dates.parse(field.getText());
        } catch (IllegalArgumentException unreadable) {
            return null;
        }
    }

    private void read() {
        Verdict verdict = verdicts.entrySet().stream().filter(choice -> choice.getValue().getSelection())
                .map(Map.Entry::getKey).findFirst().orElse(signOff.verdict());
        signOff = new SignOff(reviewer.getText(), day(date), verdict, conditions.getText(), day(expires));
        Optional<String> problem = signOff.problems(site).stream().findFirst();
        Button sign = getButton(IDialogConstants.OK_ID);
        if (sign != null) {
            sign.setEnabled(problem.isEmpty());
        }
        if (problem.isPresent()) {
            setMessage(problem.get(), IMessageProvider.ERROR);
        } else {
            doubt().ifPresentOrElse(doubt -> setMessage(doubt, IMessageProvider.WARNING),
                    () -> setMessage(visit(), IMessageProvider.INFORMATION));
        }
    }

    /** What may be signed, but hardly as it was meant; asked once both days are readable. */
    private Optional<String> doubt() {
        if (signOff.date().isAfter(visit)) {
            return Optional.of(TEXTS.text("signOffDialog.later", "date", signOff.date(), "day", visit));
        }
        if (signOff.expires().isBefore(visit) && signOff.verdict() != Verdict.DO_NOT_USE) {
            return Optional.of(TEXTS.text("signOffDialog.lapsed", "day", visit));
        }
        return SafetyNotes.of(site, signOff.date()).visit().isPresent() ? Optional.empty()
                : Optional.of(TEXTS.text("signOffDialog.unseen"));
    }

    private String visit() {
        SafetyNotes notes = SafetyNotes.of(site, signOff.date());
        return notes.visit().map(visit -> TEXTS.text("signOffDialog.seen", "visit", Naming.name(visit), "count",
                notes.hazards().size())).orElse("");
    }
}
