package org.straddle.ui.editors;

import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.straddle.grid.GeoPosition;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** The position of a site or base as one value: latitude and longitude change together. */
final class Marks {

    private static final Catalogue TEXTS = Catalogue.of(Marks.class);

    private Marks() {
    }

    static Slot<GeoPosition> slot(EventSession session, EObject owner, EAttribute latitude, EAttribute longitude) {
        return new Slot<>(() -> position((double) owner.eGet(latitude), (double) owner.eGet(longitude)),
                place -> Edit.together(TEXTS.text("marks.undo"), List.of(
                        Edit.set(session.editingDomain(), owner, latitude, place.latitudeDeg()),
                        Edit.set(session.editingDomain(), owner, longitude, place.longitudeDeg()))));
    }

    /** Null for 0, 0, which nobody entered, and for numbers that are no place on earth, which a damaged file may hold. */
    static GeoPosition position(double latitudeDeg, double longitudeDeg) {
        boolean possible = Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= 180;
        return possible && (latitudeDeg != 0 || longitudeDeg != 0) ? new GeoPosition(latitudeDeg, longitudeDeg) : null;
    }
}
