package org.straddle.ui.editors;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.straddle.grid.GeoPosition;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.sky.Horizon;
import org.straddle.visit.SiteVisits;
import org.straddle.ui.fields.Deed;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.horizon.HorizonCanvas;
import org.straddle.ui.horizon.HorizonSources;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** What the mask of a site and that of a visit have in common on a form. */
final class HorizonForm {

    private static final Catalogue TEXTS = Catalogue.of(HorizonForm.class);

    private HorizonForm() {
    }

    /** The canvas is made before its first refresh, but not before the form asks for one. */
    static void refresh(HorizonCanvas canvas) {
        if (canvas != null) {
            canvas.refresh();
        }
    }

    /** Takes over what was drawn; a mask that came from elsewhere is then said to be corrected by hand. */
    static void drawn(EventSession session, Identified owner, List<Horizon.Point> points) {
        String before = (String) owner.eGet(owner instanceof Site ? Literals.SITE__HORIZON_ORIGIN : Literals.VISIT__HORIZON_ORIGIN);
        String origin = before == null || before.isBlank() ? TEXTS.text("horizonForm.drawn")
                : before.endsWith(TEXTS.text("horizonForm.byHand")) ? before
                        : TEXTS.text("horizonForm.corrected", "before", before);
        if (points.isEmpty()) {
            clear(session, owner);
        } else {
            session.execute(SiteVisits.setHorizon(session.editingDomain(), owner, new Horizon(points), origin));
        }
    }

    /** @param more what only one of them has; its buttons come last */
    static List<Button> buttons(FieldForm form, Identified owner, Supplier<? extends List<HorizonPoint>> mask,
            Supplier<Optional<GeoPosition>> mark, Deed... more) {
        Shell shell = form.managedForm().getForm().getShell();
        List<Deed> deeds = new ArrayList<>(List.of(
                Deed.of(TEXTS.text("horizonForm.fromElevation"), TEXTS.text("horizonForm.fromElevation.tooltip"),
                        () -> HorizonSources.compute(shell, owner, mark.get())),
                Deed.of(TEXTS.text("horizonForm.readTable"), TEXTS.text("horizonForm.readTable.tooltip"),
                        () -> HorizonSources.readTable(shell, owner)),
                Deed.looking(TEXTS.text("horizonForm.writeTable"), TEXTS.text("horizonForm.writeTable.tooltip"),
                        () -> HorizonSources.writeTable(shell, mask.get().stream()
                                .map(point -> new Horizon.Point(point.getAzimuthDeg(), point.getElevationDeg())).toList())),
                Deed.of(TEXTS.text("horizonForm.clear"), TEXTS.text("horizonForm.clear.tooltip"), () -> clear(form.session(), owner))));
        deeds.addAll(List.of(more));
        return form.buttons(deeds.toArray(Deed[]::new));
    }

    private static void clear(EventSession session, Identified owner) {
        boolean ofSite = owner instanceof Site;
        session.execute(Edit.together(TEXTS.text("horizonForm.clearHorizon"), List.of(
                Edit.set(session.editingDomain(), owner, ofSite ? Literals.SITE__HORIZON : Literals.VISIT__HORIZON, List.of()),
                Edit.set(session.editingDomain(), owner,
                        ofSite ? Literals.SITE__HORIZON_ORIGIN : Literals.VISIT__HORIZON_ORIGIN, null))));
    }
}
