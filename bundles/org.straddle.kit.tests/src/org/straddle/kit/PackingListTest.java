package org.straddle.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.kit.KitNotation.carrying;
import static org.straddle.kit.KitNotation.team;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.model.KitItem;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.Tick;

class PackingListTest {

    private static List<String> names(Team team) {
        return PackingList.of(team).rows().stream().map(PackingRow::name).toList();
    }

    @Test
    void ordersByRoleThenNameAcrossKits() {
        assertEquals(List.of("alpha", "Beta", "gamma", "whip", "tea"),
                names(team("comfort tea; antenna whip; radio Beta", "radio gamma; radio alpha")));
    }

    @Test
    void aRowSaysWhatItsItemSays() {
        PackingRow row = PackingList.of(team("radio rig; radio old fm linear x2 1.5kg ->rig")).rows().get(0);
        assertEquals("old 2 FM, linear rig 3 kg", String.join(" ", row.name(), row.count() + "", row.modesText(),
                row.spareFor().orElseThrow(), row.weightText()));
    }

    @Test
    void keepsItsAnswerWhenTheKitChanges() {
        Team team = team("radio rig 2kg");
        PackingList list = PackingList.of(team);
        KitItem item = team.getKits().get(0).getItems().get(0);
        item.setName("other");
        item.setWeightKg(9);
        assertEquals("rig 2 kg", list.rows().get(0).name() + " " + list.rows().get(0).weightText());
    }

    @Test
    void weighsTheKitAgainstTheVehicle() {
        String kit = "radio rig 4kg; power battery x2 6kg; tool rope";
        assertEquals("16 kg without 1 item of unknown weight of the 20 kg that the vehicle may carry.",
                PackingList.of(carrying(team(kit), 20)).load().sentence());
        assertFalse(PackingList.of(carrying(team(kit), 16)).load().exceeded());
        assertTrue(PackingList.of(carrying(team(kit), 15.9)).load().exceeded());
        assertFalse(PackingList.of(team(kit)).load().exceeded());
        assertEquals(PackingList.of(carrying(team(kit), 10)).remarks().get(0),
                "16 kg without 1 item of unknown weight, more than the 10 kg that the vehicle may carry:"
                        + " leave something behind.");
    }

    @Test
    void countsWhatIsTicked() {
        Team team = team("radio rig; radio old x3");
        Tick tick = StraddleFactory.eINSTANCE.createTick();
        tick.setBy("Q0AAR");
        tick.setAt(Instant.parse("2031-06-20T08:00:00Z"));
        team.getKits().get(0).getItems().get(0).setTick(tick);
        PackingList list = PackingList.of(team);
        assertEquals("2 items, 4 pieces, 1 of 2 ticked; 0 kg without 2 items of unknown weight;"
                + " the vehicle's load is not known.", list.summary());
        assertEquals(Optional.of(new Packed("Q0AAR", Optional.of(tick.getAt()))), list.rows().get(1).packed());
    }

    @Test
    void oddFiguresAndMissingNamesFromAFileDoNoHarm() {
        Team team = team("radio rig -3kg; power battery -10Wh");
        KitItem nameless = team.getKits().get(0).getItems().get(0);
        nameless.setName(null);
        nameless.setCount(-4);
        nameless.setDrawsW(Double.NaN);
        team.getKits().get(0).setName(" ");
        team.setName(null);
        PackingList list = PackingList.of(team);
        assertEquals("a team without a name: an item without a name × 0, 0.0 kg", list.team() + ": " + list.rows().get(0).name()
                + " × " + list.rows().get(0).count() + ", " + list.load().kitKg() + " kg");
    }

    @Test
    void aTeamWithoutKitHasAnEmptyList() {
        PackingList list = PackingList.of(team());
        assertTrue(list.isEmpty());
    }
}
