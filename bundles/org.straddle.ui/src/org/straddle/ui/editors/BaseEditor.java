package org.straddle.ui.editors;

import org.straddle.model.Base;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Positions;
import org.straddle.ui.fields.Words;

/** A place where teams start and end their days. */
public final class BaseEditor extends ThingEditor<Base> {

    public BaseEditor() {
        super(Base.class);
    }

    @Override
    void fields(FieldForm form, Base base) {
        form.section("Base", "");
        form.text("Name", "", Words.required("Enter the base's name."), base, Literals.BASE__NAME);
        form.text("Position", "", new Positions(), Marks.slot(session(), base, Literals.BASE__LATITUDE_DEG,
                Literals.BASE__LONGITUDE_DEG));
    }
}
