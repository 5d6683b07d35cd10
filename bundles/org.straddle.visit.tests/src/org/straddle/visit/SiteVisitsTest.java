package org.straddle.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Fresh;
import org.straddle.model.Mark;
import org.straddle.model.OverheadLine;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.sky.Horizon;

class SiteVisitsTest {

    private final EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(),
            new BasicCommandStack());
    private final Site site = Fresh.site();
    private Visit first;

    @BeforeEach
    void aSiteThatWasVisitedOnce() {
        first = Fresh.visit();
        first.setDate(LocalDate.parse("2026-05-01"));
        first.setParking("lay-by");
        first.setAllowedBy("the farm");
        first.setNote("fog");
        OverheadLine line = StraddleFactory.eINSTANCE.createOverheadLine();
        line.setDistanceM(40);
        first.getOverheadLines().add(line);
        site.getVisits().add(first);
    }

    @Test
    void aNewVisitStartsFromWhatLastsAndLeavesTheOldOneAlone() {
        Visit before = EcoreUtil.copy(first);
        Visit next = SiteVisits.next(site, LocalDate.parse("2026-06-01"), "Q0AAR");
        domain.getCommandStack().execute(SiteVisits.add(domain, site, next));
        assertEquals("lay-by", next.getParking());
        assertEquals("the farm", next.getAllowedBy());
        assertEquals(40, next.getOverheadLines().get(0).getDistanceM());
        assertEquals(null, next.getNote());
        assertTrue(EcoreUtil.equals(before, first));
        assertEquals(List.of(next, first), SiteVisits.newestFirst(site));
        assertTrue(SiteVisits.isHistory(site, first) && !SiteVisits.isHistory(site, next));
        next.setDate(LocalDate.parse("2026-04-01"));
        assertFalse(SiteVisits.isHistory(site, first) || SiteVisits.isHistory(site, next), "one is the newest, one was added last");
        domain.getCommandStack().undo();
        assertEquals(List.of(first), site.getVisits());
    }

    @Test
    void theMarkOfAVisitBecomesTheSitesInOneStep() {
        assertTrue(SiteVisits.markInUse(site, first), "there is none");
        Mark mark = StraddleFactory.eINSTANCE.createMark();
        mark.setLatitudeDeg(64);
        mark.setLongitudeDeg(-20);
        mark.setErrorM(2.5);
        domain.getCommandStack().execute(SiteVisits.setMark(domain, first, mark));
        assertFalse(SiteVisits.markInUse(site, first));
        domain.getCommandStack().execute(SiteVisits.useMark(domain, site, first));
        assertEquals("64.0 -20.0 2.5", site.getLatitudeDeg() + " " + site.getLongitudeDeg() + " " + site.getMarkErrorM());
        assertTrue(SiteVisits.markInUse(site, first));
        domain.getCommandStack().undo();
        assertEquals(0, site.getLatitudeDeg());
    }

    @Test
    void theHorizonOfAVisitBecomesTheSitesInOneStep() {
        domain.getCommandStack().execute(SiteVisits.setHorizon(domain, first, Horizon.parse("0:5 90:2"), "Typed."));
        assertFalse(SiteVisits.horizonInUse(site, first));
        domain.getCommandStack().execute(SiteVisits.useHorizon(domain, site, first));
        assertTrue(SiteVisits.horizonInUse(site, first));
        assertEquals(2, first.getHorizon().size(), "it is a copy");
        domain.getCommandStack().undo();
        assertEquals(0, site.getHorizon().size());
        assertEquals("Typed.", first.getHorizonOrigin());
    }
}
