package org.straddle.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

class ModelTest {

    private static final StraddlePackage MODEL = StraddlePackage.eINSTANCE;

    /** A unit at the end of the name, or a quantity that has none. */
    private static final Pattern UNIT = Pattern.compile(
            "minutes|.*(?:Dbi|Deg|DegC|M|Km|Kmh|Kg|Litres|Wh|W|Kv|Mhz|Hz|Minutes|Percent|Days|Years|PerDay|PerMinute|Seconds)");
    private static final Set<String> WITHOUT_UNIT = Set.of("detourFactor", "leastPresence",
            "eccentricity", "bstar", "meanMotionDot", "meanMotionDdot", "price");

    @Test
    void everyQuantityNamesItsUnit() {
        List<String> nameless = new ArrayList<>();
        for (EClassifier classifier : MODEL.getEClassifiers()) {
            if (classifier instanceof EClass kind) {
                for (EAttribute attribute : kind.getEAttributes()) {
                    if (attribute.getEAttributeType() == EcorePackage.Literals.EDOUBLE
                            && !UNIT.matcher(attribute.getName()).matches()
                            && !WITHOUT_UNIT.contains(attribute.getName())) {
                        nameless.add(kind.getName() + "." + attribute.getName());
                    }
                }
            }
        }
        assertEquals(List.of(), nameless);
    }

    @Test
    void aFreshObjectCarriesAUuidOfItsOwn() {
        for (EClassifier classifier : MODEL.getEClassifiers()) {
            if (classifier instanceof EClass kind && !kind.isAbstract() && MODEL.getIdentified().isSuperTypeOf(kind)) {
                Identified one = Fresh.of(kind);
                assertEquals(one.getId(), UUID.fromString(one.getId()).toString());
                assertNotEquals(one.getId(), Fresh.of(kind).getId());
            }
        }
    }

    @Test
    void theIdentityIsTheIdAttribute() {
        assertSame(MODEL.getIdentified_Id(), MODEL.getSite().getEIDAttribute());
    }

    @Test
    void aFreshEventHasPoliciesAndAnEmptyPlan() {
        Event event = Fresh.event("Midsummer");
        assertEquals("Midsummer", event.getName());
        assertTrue(event.getPolicies().getRoadSpeedKmh() > 0);
        assertEquals(List.of(), event.getPlan().getStops());
    }

    @Test
    void instantsAndDatesAreWrittenInTheIsoNotation() {
        Instant instant = Instant.parse("2031-06-21T10:02:11Z");
        assertEquals("2031-06-21T10:02:11Z", EcoreUtil.convertToString(MODEL.getInstant(), instant));
        assertEquals(instant, EcoreUtil.createFromString(MODEL.getInstant(), "2031-06-21T10:02:11Z"));
        assertEquals(LocalDate.of(2031, 6, 21), EcoreUtil.createFromString(MODEL.getDate(), "2031-06-21"));
    }

    @Test
    void aSnapshotKeepsIdsAndReferencesAndNoticesNoLaterEdit() {
        Event event = Fresh.event("Midsummer");
        Site site = Fresh.site();
        site.setName("Gate");
        Stop stop = Fresh.stop();
        stop.setSite(site);
        event.getSites().add(site);
        event.getPlan().getStops().add(stop);

        Event snapshot = Snapshot.of(event);
        site.setName("Bridge");

        Site copied = snapshot.getSites().get(0);
        assertNotSame(site, copied);
        assertEquals(site.getId(), copied.getId());
        assertEquals("Gate", copied.getName());
        assertSame(copied, snapshot.getPlan().getStops().get(0).getSite());
    }
}
