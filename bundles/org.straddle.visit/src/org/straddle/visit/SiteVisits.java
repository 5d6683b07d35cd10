package org.straddle.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Fresh;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Identified;
import org.straddle.model.Mark;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Visit;
import org.straddle.sky.Horizon;
import org.straddle.words.Catalogue;

/**
 * Visits are history: a new one is added beside the old ones and starts from what the newest knew. What was seen that
 * day is then taken over for the site, each as one step for undo.
 */
public final class SiteVisits {

    private static final Catalogue TEXTS = Catalogue.of(SiteVisits.class);

    private SiteVisits() {
    }

    /** Newest first; those without a date stand where they were added. */
    public static List<Visit> newestFirst(Site site) {
        List<Visit> visits = new ArrayList<>(site.getVisits());
        Collections.reverse(visits);
        visits.sort(Comparator.comparing(Visit::getDate, Comparator.nullsFirst(Comparator.<LocalDate>naturalOrder().reversed())));
        return visits;
    }

    /** The newest visit, and the one that was added last, whatever its day: the others are history. */
    public static boolean isHistory(Site site, Visit visit) {
        int last = site.getVisits().size() - 1;
        return last >= 0 && visit != site.getVisits().get(last) && visit != newestFirst(site).get(0);
    }

    /**
     * A new visit. What lasts is taken over from the newest one, to be confirmed on the spot: access, who
     * allowed it, road, parking, surface, phone, hazards and overhead wires. What must be seen again is left empty:
     * the mark, the horizon, photos and notes.
     *
     * @param visitor may be null
     */
    public static Visit next(Site site, LocalDate day, String visitor) {
        Visit visit = Fresh.visit();
        newestFirst(site).stream().findFirst().ifPresent(before -> {
            for (EStructuralFeature lasting : List.of(Literals.VISIT__ACCESS, Literals.VISIT__ALLOWED_BY, Literals.VISIT__ACCESS_UNTIL,
                    Literals.VISIT__ROAD_SPEED_KMH, Literals.VISIT__PARKING, Literals.VISIT__SURFACE,
                    Literals.VISIT__PHONE_COVERAGE)) {
                visit.eSet(lasting, before.eGet(lasting));
            }
            visit.getHazards().addAll(EcoreUtil.copyAll(before.getHazards()));
            visit.getOverheadLines().addAll(EcoreUtil.copyAll(before.getOverheadLines()));
        });
        visit.setDate(day);
        visit.setVisitor(visitor);
        return visit;
    }

    public static Command add(EditingDomain domain, Site site, Visit visit) {
        return named(TEXTS.text("visit.addVisit"), AddCommand.create(domain, site, Literals.SITE__VISITS, visit));
    }

    /** Position, height and error of the site become those of the visit's mark, which it must have. */
    public static Command useMark(EditingDomain domain, Site site, Visit visit) {
        Mark mark = visit.getMark();
        return named(TEXTS.text("visit.useMarkVisit"),
                set(domain, site, Literals.SITE__LATITUDE_DEG, mark.getLatitudeDeg()),
                set(domain, site, Literals.SITE__LONGITUDE_DEG, mark.getLongitudeDeg()),
                set(domain, site, Literals.SITE__ALTITUDE_M, mark.getAltitudeM()),
                set(domain, site, Literals.SITE__MARK_ERROR_M, mark.getErrorM()));
    }

    /** Whether {@link #useMark} would change nothing, or there is no mark. */
    public static boolean markInUse(Site site, Visit visit) {
        Mark mark = visit.getMark();
        return mark == null || mark.getLatitudeDeg() == site.getLatitudeDeg() && mark.getLongitudeDeg() == site.getLongitudeDeg()
                && mark.getErrorM() == site.getMarkErrorM() && mark.getAltitudeM() == site.getAltitudeM();
    }

    /** The mask of the site becomes a copy of the visit's. */
    public static Command useHorizon(EditingDomain domain, Site site, Visit visit) {
        String from = visit.getDate() == null ? TEXTS.text("visit.fromVisitWithout") : TEXTS.text("visit.fromVisit",
                "date", visit.getDate());
        String origin = visit.getHorizonOrigin() == null ? from : from + " " + visit.getHorizonOrigin();
        return named(TEXTS.text("visit.useHorizonVisit"),
                set(domain, site, Literals.SITE__HORIZON, List.copyOf(EcoreUtil.copyAll(visit.getHorizon()))),
                set(domain, site, Literals.SITE__HORIZON_ORIGIN, origin));
    }

    /** Whether {@link #useHorizon} would change nothing, or the visit has no mask. */
    public static boolean horizonInUse(Site site, Visit visit) {
        return visit.getHorizon().isEmpty() || EcoreUtil.equals(visit.getHorizon(), site.getHorizon());
    }

    /** Another mask, with how it was found, for a visit or for the site itself. */
    public static Command setHorizon(EditingDomain domain, Identified owner, Horizon mask, String origin) {
        boolean ofSite = owner instanceof Site;
        return named(TEXTS.text("visit.changeHorizon"),
                set(domain, owner, ofSite ? Literals.SITE__HORIZON : Literals.VISIT__HORIZON, points(mask)),
                set(domain, owner, ofSite ? Literals.SITE__HORIZON_ORIGIN : Literals.VISIT__HORIZON_ORIGIN, origin));
    }

    public static Command setMark(EditingDomain domain, Visit visit, Mark mark) {
        return named(TEXTS.text("visit.changeMark"), set(domain, visit, Literals.VISIT__MARK, mark));
    }

    /** A mask as points of the model. */
    public static List<HorizonPoint> points(Horizon mask) {
        return mask.points().stream().map(point -> {
            HorizonPoint written = StraddleFactory.eINSTANCE.createHorizonPoint();
            written.setAzimuthDeg(point.azimuthDeg());
            written.setElevationDeg(point.elevationDeg());
            return written;
        }).toList();
    }

    private static Command set(EditingDomain domain, EObject owner, EStructuralFeature feature, Object value) {
        return SetCommand.create(domain, owner, feature, value == null ? SetCommand.UNSET_VALUE : value);
    }

    private static Command named(String label, Command... steps) {
        return new CompoundCommand(label, new ArrayList<>(List.of(steps)));
    }
}
