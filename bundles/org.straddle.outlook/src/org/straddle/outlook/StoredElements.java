package org.straddle.outlook;

import java.time.Instant;
import java.util.Objects;

import org.straddle.model.BirdElements;
import org.straddle.model.StraddleFactory;
import org.straddle.sky.ElementSet;
import org.straddle.sky.ElementSetException;
import org.straddle.words.Catalogue;

/**
 * The bridge between an element set as the event stores it and as the sky computes with it. Both hold the same
 * numbers in the same units, so a set that was stored and read back is equal to the one that was imported.
 */
public final class StoredElements {

    private static final Catalogue TEXTS = Catalogue.of(StoredElements.class);

    private StoredElements() {
    }

    /** @throws ElementSetException when a stored value is missing or out of its range, naming the set */
    public static ElementSet toElementSet(BirdElements stored) {
        String name = orEmpty(stored.getName());
        if (stored.getEpoch() == null) {
            throw new ElementSetException(TEXTS.text("storedElements.hasEpoch", "name", name.isEmpty()
                    ? TEXTS.text("storedElements.elementSet", "catalogueNumber", stored.getCatalogueNumber()) : name));
        }
        return new ElementSet(name, stored.getCatalogueNumber(), orEmpty(stored.getInternationalDesignator()),
                stored.getEpoch(), stored.getMeanMotionRevPerDay(), stored.getEccentricity(),
                stored.getInclinationDeg(), stored.getRaanDeg(), stored.getArgumentOfPerigeeDeg(),
                stored.getMeanAnomalyDeg(), stored.getBstar(), stored.getMeanMotionDot(), stored.getMeanMotionDdot(),
                stored.getElementSetNumber(), stored.getRevolutionAtEpoch());
    }

    /**
     * @param file       name of the file in the elements folder that the set came from
     * @param origin     originator that the file names; may be empty
     * @param importedAt UTC
     */
    public static BirdElements toBirdElements(ElementSet set, String file, String origin, Instant importedAt) {
        BirdElements stored = StraddleFactory.eINSTANCE.createBirdElements();
        stored.setName(set.name());
        stored.setCatalogueNumber(set.catalogueNumber());
        stored.setInternationalDesignator(set.internationalDesignator());
        stored.setEpoch(set.epoch());
        stored.setMeanMotionRevPerDay(set.meanMotionRevPerDay());
        stored.setEccentricity(set.eccentricity());
        stored.setInclinationDeg(set.inclinationDeg());
        stored.setRaanDeg(set.raanDeg());
        stored.setArgumentOfPerigeeDeg(set.argumentOfPerigeeDeg());
        stored.setMeanAnomalyDeg(set.meanAnomalyDeg());
        stored.setBstar(set.bstar());
        stored.setMeanMotionDot(set.meanMotionDot());
        stored.setMeanMotionDdot(set.meanMotionDdot());
        stored.setElementSetNumber(set.elementSetNumber());
        stored.setRevolutionAtEpoch(set.revolutionAtEpoch());
        stored.setFile(Objects.requireNonNull(file, "file"));
        stored.setOrigin(origin);
        stored.setImportedAt(importedAt);
        return stored;
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
