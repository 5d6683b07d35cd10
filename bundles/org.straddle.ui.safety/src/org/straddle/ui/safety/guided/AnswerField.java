package org.straddle.ui.safety.guided;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.safety.guided.AnswerKind;
import org.straddle.safety.guided.Question;
import org.straddle.words.Catalogue;

/** Where the answer to one question goes: a box, or a few choices that digits pick. */
interface AnswerField {

    Catalogue TEXTS = Catalogue.of(AnswerField.class);

    String text();

    void setFocus();

    static AnswerField of(Composite parent, Question question, String known) {
        return question.kind() instanceof AnswerKind.Choice choice ? new Choices(parent, choice, known)
                : new Box(parent, question, question.kind() instanceof AnswerKind.Figure figure ? figure.unit() : "", known);
    }

    /** A line to type in, with its unit behind it. */
    final class Box implements AnswerField {

        private final Text box;

        Box(Composite parent, Question question, String unit, String known) {
            Composite row = new Composite(parent, SWT.NONE);
            GridLayoutFactory.fillDefaults().numColumns(2).applyTo(row);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
            box = new Text(row, SWT.BORDER | SWT.SINGLE);
            box.setText(known);
            box.selectAll();
            box.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(asked -> asked.result = question.text()));
            GridDataFactory.fillDefaults().grab(unit.isEmpty(), false).hint(unit.isEmpty() ? SWT.DEFAULT : 120, SWT.DEFAULT).applyTo(box);
            new Label(row, SWT.NONE).setText(unit);
        }

        @Override
        public String text() {
            return box.getText().strip();
        }

        @Override
        public void setFocus() {
            box.setFocus();
        }
    }

    /** Radio buttons, the n-th with the digit n as its mnemonic. */
    final class Choices implements AnswerField {

        private final List<Button> buttons = new ArrayList<>();

        Choices(Composite parent, AnswerKind.Choice choice, String known) {
            int number = 0;
            for (AnswerKind.Option option : choice.options()) {
                Button button = new Button(parent, SWT.RADIO);
                button.setText(TEXTS.text("answerField.option", "number", ++number, "option", option.label().replace("&", "&&")));
                button.setData(option.value());
                button.setSelection(option.value().equals(known));
                buttons.add(button);
            }
            // A digit picks without the Alt key too: nothing is typed here.
            buttons.forEach(button -> button.addListener(SWT.KeyDown, key -> pick(key.character - '1')));
        }

        private void pick(int at) {
            if (at >= 0 && at < buttons.size()) {
                buttons.forEach(button -> button.setSelection(button == buttons.get(at)));
                buttons.get(at).setFocus();
            }
        }

        @Override
        public String text() {
            return buttons.stream().filter(Button::getSelection).map(button -> Objects.toString(button.getData())).findFirst().orElse("");
        }

        @Override
        public void setFocus() {
            // The first button would be chosen by getting the focus, and an answer that nobody gave is none.
            boolean none = text().isEmpty();
            buttons.stream().filter(Button::getSelection).findFirst().orElse(buttons.get(0)).setFocus();
            if (none) {
                buttons.forEach(button -> button.setSelection(false));
            }
        }
    }
}
