package org.straddle.kit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.straddle.kit.team.Inventory;
import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Task;
import org.straddle.kit.work.Work;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;

/**
 * A kit in a few words, one item each, parted by semicolons: role, name, then in any order a mode ("fm"), "x2" pieces,
 * "5kg", "150Wh" stored, "12W" drawn, "->name" for what it can stand in for. "!" after the name: the item is needed.
 */
final class KitNotation {

    private KitNotation() {
    }

    static Team team(String... kits) {
        Team team = Fresh.team();
        team.setName("North");
        team.setNumber(1);
        Map<String, KitItem> byName = new HashMap<>();
        Map<KitItem, String> spares = new HashMap<>();
        for (String text : kits) {
            Kit kit = Fresh.kit();
            kit.setName("kit");
            for (String item : text.isBlank() ? new String[0] : text.split(";")) {
                kit.getItems().add(item(item.strip().split("\\s+"), byName, spares));
            }
            team.getKits().add(kit);
        }
        spares.forEach((item, name) -> item.setSpareFor(byName.get(name)));
        return team;
    }

    private static KitItem item(String[] words, Map<String, KitItem> byName, Map<KitItem, String> spares) {
        KitItem item = Fresh.kitItem(words[1].replace("!", ""), Role.get(words[0]));
        item.setNeeded(words[1].endsWith("!"));
        byName.put(item.getName(), item);
        for (String word : List.of(words).subList(2, words.length)) {
            if (word.startsWith("->")) {
                spares.put(item, word.substring(2));
            } else if (word.startsWith("x")) {
                item.setCount(Integer.parseInt(word.substring(1)));
            } else if (word.endsWith("kg")) {
                item.setWeightKg(Double.parseDouble(word.replace("kg", "")));
            } else if (word.endsWith("Wh")) {
                item.setStoresWh(Double.parseDouble(word.replace("Wh", "")));
            } else if (word.endsWith("W")) {
                item.setDrawsW(Double.parseDouble(word.replace("W", "")));
            } else {
                item.getModes().add(WorkMode.get(word));
            }
        }
        return item;
    }

    static Team carrying(Team team, double loadKg) {
        team.setVehicle(StraddleFactory.eINSTANCE.createVehicle());
        team.getVehicle().setLoadKg(loadKg);
        return team;
    }

    /** "rig:fm+linear yagi:fm". */
    static String singlePoints(Team team) {
        Map<String, List<String>> stops = new TreeMap<>();
        answers(team).forEach((mode, answer) -> answer.single().forEach(gear -> stops
                .computeIfAbsent(gear.name(), any -> new ArrayList<>()).add(mode.getLiteral())));
        return stops.entrySet().stream().map(stop -> stop.getKey() + ":" + String.join("+", stop.getValue()))
                .collect(Collectors.joining(" "));
    }

    /** "fm linear", the modes that the kit covers on bands that nobody named. */
    static String covered(Team team) {
        return answers(team).entrySet().stream().filter(entry -> entry.getValue().possible()).map(entry -> entry.getKey().getLiteral())
                .collect(Collectors.joining(" "));
    }

    static Map<WorkMode, Answer> answers(Team team) {
        Map<WorkMode, Work> works = new EnumMap<>(Map.of(WorkMode.FM, Work.FM, WorkMode.LINEAR, Work.LINEAR_HALF_DUPLEX,
                WorkMode.DATA, Work.DATA));
        Map<WorkMode, Answer> answers = new EnumMap<>(WorkMode.class);
        works.forEach((mode, work) -> answers.put(mode, Answer.of(new Task(work, "", ""), Inventory.of(team).carried())));
        return answers;
    }
}
