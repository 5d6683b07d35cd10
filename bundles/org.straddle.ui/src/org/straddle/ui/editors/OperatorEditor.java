package org.straddle.ui.editors;

import org.straddle.model.Operator;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Listed;
import org.straddle.ui.fields.Words;

/** A person who goes along. */
public final class OperatorEditor extends ThingEditor<Operator> {

    public OperatorEditor() {
        super(Operator.class);
    }

    @Override
    void fields(FieldForm form, Operator operator) {
        form.section("Operator", "");
        form.text("Name", "", Words.any(), operator, Literals.OPERATOR__NAME);
        form.text("Call sign", "", Words.required("Enter the call sign."), operator, Literals.OPERATOR__CALL_SIGN);
        form.text("Home", "", Words.any(), operator, Literals.OPERATOR__HOME);

        form.section("Licence and skills", "");
        form.text("Licence class", "", Words.any(), operator, Literals.OPERATOR__LICENCE_CLASS);
        form.text("Bands", "", Listed.of(Words.any()), operator, Literals.OPERATOR__BANDS)
                .example("2m, 70cm");
        form.text("Skills", "", Listed.of(Words.any()), operator, Literals.OPERATOR__SKILLS)
                .example("driving, first aid, linear");

        form.wide("In an emergency", "Whom to call, and how, when something happens. It is printed on the team's own"
                + " brief only.");
        form.lines("Contact", 3, operator, Literals.OPERATOR__EMERGENCY_CONTACT);
    }
}
