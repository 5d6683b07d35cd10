package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.IMessage;
import org.eclipse.ui.forms.widgets.Form;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Team;

/** What happens to text that cannot be what a field asks for. */
class FieldTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @Test
    void unreadableTextShowsAMessageAndNeverReachesTheEvent() {
        Team team = WINDOW.ask(() -> WINDOW.session().event().getTeams().get(1));
        int number = WINDOW.ask(team::getNumber);
        WINDOW.ui(() -> WINDOW.session().reveal(team));
        Text field = WINDOW.ask(() -> RunningWorkbench.below(form(), Text.class).stream()
                .filter(text -> text.getText().equals(Integer.toString(number))).findFirst().orElseThrow());
        assertEquals(List.of(), WINDOW.ask(FieldTest::errors));

        for (String wrong : List.of("two", "2.5", "-", "99999999999999999999")) {
            WINDOW.ui(() -> field.setText(wrong));
            assertEquals(1, WINDOW.ask(FieldTest::errors).size(), wrong);
            WINDOW.ui(() -> WINDOW.session().commitPendingEdits());
            assertEquals(number, WINDOW.ask(team::getNumber), wrong);
            assertFalse(WINDOW.ask(() -> WINDOW.session().dirty()), wrong);
        }
        WINDOW.ui(() -> field.setText("7"));
        assertTrue(WINDOW.ask(FieldTest::errors).isEmpty());
        WINDOW.ui(() -> WINDOW.session().commitPendingEdits());
        assertEquals(7, WINDOW.ask(team::getNumber));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(Integer.toString(number), WINDOW.ask(field::getText), "the field follows undo");
    }

    private static Form form() {
        return RunningWorkbench.below(DemoWindow.page().getActiveEditor().getSite().getShell(), Form.class).stream()
                .filter(Form::isVisible).findFirst().orElseThrow();
    }

    private static List<String> errors() {
        IMessage[] all = form().getChildrenMessages();
        return all == null ? List.of() : List.of(all).stream()
                .filter(message -> message.getMessageType() == IMessageProvider.ERROR).map(IMessage::getMessage).toList();
    }
}
