package org.straddle.ui.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.demo.DemoEvent;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Snapshot;

/** A case is put once and asked in every copy of the event that is searched in. */
class CaseTest {

    private static final Instant NOON = Instant.parse("2027-06-19T12:00:00Z");

    private final Event event = DemoEvent.create();

    @Test
    void everyKindForbidsItsThingInAnyCopy() {
        for (Case.Kind kind : Case.Kind.values()) {
            Identified thing = kind.things(event).get(0);
            Case happening = new Case(kind, thing.getId(), Optional.of(NOON), Optional.empty());
            Event copy = Snapshot.of(event);
            Ban ban = happening.in(copy).orElseThrow().ban();
            Identified banned = ban.getTeam() != null ? ban.getTeam() : ban.getSite() != null ? ban.getSite() : ban.getBird();
            assertEquals(thing.getId(), banned.getId(), kind.toString());
            assertSame(copy, banned.eContainer(), kind.toString());
            assertFalse(happening.words(copy).isBlank());
        }
    }

    @Test
    void aLateStartForbidsTheTimeBeforeAndABreakdownTheTimeAfter() {
        String team = event.getTeams().get(0).getId();
        Ban late = new Case(Case.Kind.TEAM_LATE, team, Optional.of(NOON), Optional.empty()).in(event).orElseThrow().ban();
        assertEquals(NOON, late.getUntil());
        Ban out = new Case(Case.Kind.TEAM_OUT, team, Optional.of(NOON), Optional.empty()).in(event).orElseThrow().ban();
        assertEquals(NOON, out.getFrom());
    }

    @Test
    void whatIsGoneIsNoCaseAnyMore() {
        Case happening = new Case(Case.Kind.SITE_CLOSED, event.getSites().get(0).getId(), Optional.empty(), Optional.empty());
        Event copy = Snapshot.of(event);
        copy.getSites().remove(0);
        assertTrue(happening.in(copy).isEmpty());
        assertTrue(happening.in(event).isPresent());
        assertFalse(happening.words(copy).equals(happening.words(event)));
    }
}
