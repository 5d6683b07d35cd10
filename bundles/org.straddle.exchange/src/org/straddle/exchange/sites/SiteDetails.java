package org.straddle.exchange.sites;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.straddle.grid.Geodesic;
import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.words.Catalogue;

/** What a line of a table says of a site that the event does not say yet, field by field. */
final class SiteDetails {

    private static final Catalogue TEXTS = Catalogue.of(SiteDetails.class);

    /** Files with seven decimals of a degree give a position to less than this. */
    private static final double SAME_PLACE_M = 0.01;

    private SiteDetails() {
    }

    /** @param site null for one that is yet to be made */
    static List<SiteChange.Detail> of(SiteValues values, Site site) {
        List<SiteChange.Detail> details = new ArrayList<>();
        values.name().filter(name -> site != null && !name.equals(site.getName())).ifPresent(name -> details.add(new SiteChange.Detail(
                SiteField.NAME, Objects.toString(site.getName(), ""), name, Map.of(Literals.SITE__NAME, name))));
        values.position().ifPresent(read -> {
            boolean placed = site != null && SiteImport.isPlaced(site);
            double moved = placed ? Geodesic.distanceM(SiteImport.position(site), read.position()) : Double.POSITIVE_INFINITY;
            if (moved > SAME_PLACE_M && !(placed && values.isKnownBetter(SiteImport.position(site)))) {
                Map<EStructuralFeature, Object> both = new LinkedHashMap<>();
                both.put(Literals.SITE__LATITUDE_DEG, read.position().latitudeDeg());
                both.put(Literals.SITE__LONGITUDE_DEG, read.position().longitudeDeg());
                details.add(new SiteChange.Detail(SiteField.POSITION, placed ? SiteImport.position(site).toString() : "",
                        read.interpretation() + (placed ? TEXTS.text("siteDetails.away", "far", far(moved)) : ""), both));
            }
        });
        number(details, SiteField.ALTITUDE, Literals.SITE__ALTITUDE_M, site, values.altitudeM().isPresent() ? values.altitudeM().getAsDouble() : null);
        number(details, SiteField.ERROR, Literals.SITE__MARK_ERROR_M, site, values.errorM().isPresent() ? values.errorM().getAsDouble() : null);
        values.kind().filter(kind -> site == null || kind != site.getKind()).ifPresent(kind -> details.add(new SiteChange.Detail(SiteField.KIND,
                site == null || site.getKind() == null ? "" : site.getKind().getLiteral(), kind.getLiteral(), Map.of(Literals.SITE__KIND, kind))));
        List<String> squares = values.squares().stream().map(Square::name).toList();
        if (!squares.isEmpty() && (site == null || !Set.copyOf(squares).equals(new HashSet<>(site.getSquares())))) {
            details.add(new SiteChange.Detail(SiteField.SQUARES, site == null ? "" : String.join(" ", site.getSquares()),
                    String.join(" ", squares), Map.of(Literals.SITE__SQUARES, squares)));
        }
        return details;
    }

    private static void number(List<SiteChange.Detail> details, SiteField field, EStructuralFeature feature, Site site, Double value) {
        if (value != null && (site == null || (double) site.eGet(feature) != value)) {
            details.add(new SiteChange.Detail(field, site == null ? "" : plain((double) site.eGet(feature)) + " m", plain(value) + " m",
                    Map.of(feature, value)));
        }
    }

    private static String plain(double value) {
        return Double.isFinite(value) ? new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString() : String.valueOf(value);
    }

    private static String far(double metres) {
        return metres < 1000 ? TEXTS.text("siteDetails.metres", "metres", metres) : TEXTS.text("siteDetails.km",
                "metres", metres / 1000);
    }
}
