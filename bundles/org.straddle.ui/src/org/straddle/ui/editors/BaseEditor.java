package org.straddle.ui.editors;

import org.straddle.model.Base;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Positions;
import org.straddle.ui.fields.Words;
import org.straddle.words.Catalogue;

/** A place where teams start and end their days. */
public final class BaseEditor extends ThingEditor<Base> {

    private static final Catalogue TEXTS = Catalogue.of(BaseEditor.class);

    public BaseEditor() {
        super(Base.class);
    }

    @Override
    void fields(FieldForm form, Base base) {
        form.section(TEXTS.text("baseEditor.section.base"), "");
        form.text(TEXTS.text("baseEditor.name"), "", Words.required(TEXTS.text("baseEditor.name.required")), base, Literals.BASE__NAME);
        form.text(TEXTS.text("baseEditor.position"), "", new Positions(), Marks.slot(session(), base, Literals.BASE__LATITUDE_DEG,
                Literals.BASE__LONGITUDE_DEG)).example(TEXTS.text("baseEditor.position.example"));
    }
}
