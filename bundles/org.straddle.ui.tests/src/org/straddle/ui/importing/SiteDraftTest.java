package org.straddle.ui.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.sites.SiteField;
import org.straddle.exchange.sites.SiteKey;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.model.Fresh;

/** The choices on the way to importing sites, without their window. */
class SiteDraftTest {

    private final SiteDraft draft = new SiteDraft(Fresh.event("Demo"));

    private void take(String csv) throws ReadException {
        draft.take(SourceTable.read("sites.csv", csv.getBytes()));
    }

    @Test
    void readyOnceNothingIsRefusedOrRefusedLinesAreLeftOut() throws ReadException {
        assertFalse(draft.isReady());
        assertTrue(draft.problem().isPresent());
        take("name,lat,lon\nGate,64.5,-20\nMoor,64,x\n");
        assertEquals(Optional.empty(), draft.problem());
        assertFalse(draft.isReady(), "a line is refused");
        draft.leaveOutRefused(true);
        assertTrue(draft.isReady());
        draft.know(SiteKey.within(25));
        assertFalse(draft.isReady(), "other choices refuse other lines");
        assertEquals(25, draft.withinM());
        take("name,lat,lon\nGate,64.5,-20\n");
        assertTrue(draft.isReady());
        assertEquals(SiteKey.NAME, draft.key());
    }

    @Test
    void aMappingThatSaysTooLittleHasNoPreview() throws ReadException {
        take("name,lat,lon\nGate,64.5,-20\n");
        draft.map(draft.mapping().with("lat", null));
        assertTrue(draft.problem().orElseThrow().contains("latitude"));
        assertEquals(Optional.empty(), draft.preview());
        assertFalse(draft.isReady());
        draft.map(draft.mapping().with("lat", SiteField.LATITUDE));
        assertTrue(draft.isReady());
    }

    @Test
    void theSwapStaysWithTheFile() throws ReadException {
        take("name,lat,lon\nGate,120,50\n");
        assertTrue(draft.preview().orElseThrow().swapOffered());
        draft.order(CoordinateOrder.SWAPPED);
        assertTrue(draft.isReady());
        assertFalse(draft.preview().orElseThrow().swapOffered());
        take("name,lat,lon\nGate,50,120\n");
        assertEquals(CoordinateOrder.OF_THE_FORMAT, draft.order());
    }

    @Test
    void aTableThatChangesNothingIsNotReady() throws ReadException {
        take("name,lat,lon\n,,\nGate,,\n");
        assertEquals(1, draft.preview().orElseThrow().refused().size());
        draft.leaveOutRefused(true);
        assertFalse(draft.isReady());
    }
}
