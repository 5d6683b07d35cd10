package org.straddle.ui.editors;

import org.straddle.model.Operator;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.ui.fields.BandNames;
import org.straddle.ui.fields.CallSigns;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Listed;
import org.straddle.ui.fields.Locators;
import org.straddle.ui.fields.Words;
import org.straddle.words.Catalogue;

/** A person who goes along. */
public final class OperatorEditor extends ThingEditor<Operator> {

    private static final Catalogue TEXTS = Catalogue.of(OperatorEditor.class);

    public OperatorEditor() {
        super(Operator.class);
    }

    @Override
    void fields(FieldForm form, Operator operator) {
        form.section(TEXTS.text("operatorEditor.section.operator"), "");
        form.text(TEXTS.text("operatorEditor.name"), "", Words.any(), operator, Literals.OPERATOR__NAME);
        form.text(TEXTS.text("operatorEditor.callSign"),
                "", CallSigns.required(TEXTS.text("operatorEditor.callSign.required")), operator, Literals.OPERATOR__CALL_SIGN);
        form.text(TEXTS.text("operatorEditor.home"), "", Words.any(), operator, Literals.OPERATOR__HOME);
        form.text(TEXTS.text("operatorEditor.homeLocator"), "", new Locators(), operator, Literals.OPERATOR__HOME_LOCATOR)
                .example(TEXTS.text("operatorEditor.homeLocator.example"));

        form.section(TEXTS.text("operatorEditor.section.licenceAndSkills"), "");
        form.text(TEXTS.text("operatorEditor.licenceClass"), "", Words.any(), operator, Literals.OPERATOR__LICENCE_CLASS);
        form.text(TEXTS.text("operatorEditor.bands"), "", Listed.of(new BandNames()), operator, Literals.OPERATOR__BANDS)
                .example(TEXTS.text("operatorEditor.bands.example"));
        form.text(TEXTS.text("operatorEditor.skills"), "", Listed.of(Words.any()), operator, Literals.OPERATOR__SKILLS)
                .example(TEXTS.text("operatorEditor.skills.example"));

        form.wide(TEXTS.text("operatorEditor.section.inAnEmergency"), TEXTS.text("operatorEditor.section.inAnEmergency.description"));
        form.lines(TEXTS.text("operatorEditor.contact"), 3, operator, Literals.OPERATOR__EMERGENCY_CONTACT);
        form.section(TEXTS.text("operatorEditor.section.onTheRoad"), TEXTS.text("operatorEditor.section.onTheRoad.description"));
        form.text(TEXTS.text("operatorEditor.phone"), "", Words.any(), operator, Literals.OPERATOR__PHONE);
        form.text(TEXTS.text("operatorEditor.medicalNote"), "", Words.any(), operator, Literals.OPERATOR__MEDICAL_NOTE);
        form.check(TEXTS.text("operatorEditor.medicalConsent"), operator, Literals.OPERATOR__MEDICAL_CONSENT);
    }
}
