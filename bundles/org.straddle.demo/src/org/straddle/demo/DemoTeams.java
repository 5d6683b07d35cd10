package org.straddle.demo;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;

import org.straddle.model.Base;
import org.straddle.model.Chemistry;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Operator;
import org.straddle.model.Role;
import org.straddle.model.SafetyUse;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Vehicle;
import org.straddle.model.WorkMode;

/** Who goes, from where and with what. The towns are geography; the people, calls and cars are invented. */
final class DemoTeams {

    private final Event event;

    private DemoTeams(Event event) {
        this.event = event;
    }

    static void addTo(Event event) {
        new DemoTeams(event).all();
    }

    private void all() {
        Base selfoss = base("Selfoss", 63.933, -21.000);
        Base borgarnes = base("Borgarnes", 64.538, -21.920);
        Base akureyri = base("Akureyri", 65.683, -18.100);
        Base hofn = base("Höfn", 64.254, -15.208);
        Base egilsstadir = base("Egilsstaðir", 65.262, -14.395);

        Team south = team(1, "Southern Lanterns",
                List.of(operator("Marlo Sandgrouse", "Q2MRL", "full", "driving, linear"),
                        operator("Tilly Dunlin", "Q3DUN", "full", "driving, first aid"),
                        operator("Oskar Razorbill", "Q4RZB", "full", "linear")),
                vehicle("Green estate (invented)", 4, 700, 250), southKit());
        day(south, selfoss, selfoss, "2027-06-18", "08:00", "20:00");
        day(south, selfoss, borgarnes, "2027-06-19", "08:00", "20:00");
        day(south, borgarnes, selfoss, "2027-06-20", "08:00", "18:00");

        Team north = team(2, "Northern Compasses",
                List.of(operator("Juno Guillemot", "Q5GLM", "full", "driving, first aid"),
                        operator("Bram Turnstone", "Q6TST", "full", "driving, linear"),
                        operator("Perrin Kittiwake", "Q1SKY/P", "full", "linear")),
                vehicle("White van (invented)", 3, 600, 600), northKit());
        day(north, akureyri, akureyri, "2027-06-18", "07:30", "19:30");
        day(north, akureyri, akureyri, "2027-06-19", "07:30", "19:30");
        day(north, akureyri, akureyri, "2027-06-20", "08:00", "17:00");

        Operator wren = operator("Wren Sanderling", "Q7SND", "novice", "driving");
        wren.getBands().remove("70cm");
        Team east = team(3, "Eastern Anchors",
                List.of(operator("Col Phalarope", "Q0AAR", "full", "driving, linear, first aid"), wren),
                vehicle("Blue pick-up (invented)", 4, 450, 400), eastKit());
        day(east, hofn, hofn, "2027-06-18", "08:00", "20:00");
        day(east, hofn, egilsstadir, "2027-06-19", "08:00", "20:00");
        day(east, egilsstadir, hofn, "2027-06-20", "08:00", "18:00");
    }

    private Base base(String name, double latitudeDeg, double longitudeDeg) {
        Base base = DemoIdentity.named(Fresh.base(), "base/" + name);
        base.setName(name);
        base.setLatitudeDeg(latitudeDeg);
        base.setLongitudeDeg(longitudeDeg);
        event.getBases().add(base);
        return base;
    }

    private Operator operator(String name, String callSign, String licenceClass, String skills) {
        Operator operator = DemoIdentity.named(Fresh.operator(), "operator/" + callSign);
        operator.setName(name);
        operator.setCallSign(callSign);
        operator.setLicenceClass(licenceClass);
        operator.getBands().addAll(List.of("2m", "70cm"));
        operator.getSkills().addAll(List.of(skills.split(", ")));
        operator.setHome("Skerry (invented)");
        // A square in the sea off the south coast: nobody lives there.
        operator.setHomeLocator("HP83");
        // No country has the code 999.
        operator.setPhone("+999 555 02" + (10 + event.getOperators().size()));
        operator.setEmergencyContact("Kin of " + callSign + " (invented), +999 555 01" + (10 + event.getOperators().size()));
        event.getOperators().add(operator);
        return operator;
    }

    private Team team(int number, String name, List<Operator> operators, Vehicle vehicle, Kit kit) {
        Team team = DemoIdentity.named(Fresh.team(), "team/" + number);
        team.setNumber(number);
        team.setName(name);
        team.getOperators().addAll(operators);
        team.setVehicle(vehicle);
        team.getKits().add(kit);
        event.getTeams().add(team);
        return team;
    }

    private static Vehicle vehicle(String label, int seats, double rangeKm, double loadKg) {
        Vehicle vehicle = StraddleFactory.eINSTANCE.createVehicle();
        vehicle.setLabel(label);
        vehicle.setSeats(seats);
        vehicle.setRangeKm(rangeKm);
        vehicle.setLoadKg(loadKg);
        return vehicle;
    }

    /** Iceland keeps UTC the year round, so the local hours of a day are its UTC hours. */
    private static void day(Team team, Base start, Base end, String date, String from, String until) {
        TeamDay day = Fresh.teamDay(Instant.parse(date + "T" + from + ":00Z"), Instant.parse(date + "T" + until + ":00Z"),
                start, end);
        day.setCheckIn("Coordinator by telephone, +999 555 0100; where none works, by radio on the channel of the day (invented)");
        if (!team.getDays().isEmpty()) {
            day.setCharged(true);
            day.setCharging("socket at the base (invented)");
        }
        team.getDays().add(day);
    }

    /** Its spare radio covers FM only. */
    private Kit southKit() {
        Kit kit = kit("South");
        item(kit, "South spare handheld pair", Role.RADIO, 1, 1.1, WorkMode.FM)
                .setSpareFor(find(kit, "South dual-band radio"));
        item(kit, "South spare whip pair", Role.ANTENNA, 1, 0.6).setSpareFor(find(kit, "South crossed beam"));
        return kit;
    }

    private Kit northKit() {
        Kit kit = kit("North");
        item(kit, "North spare dual-band radio", Role.RADIO, 1, 2.4).setSpareFor(find(kit, "North dual-band radio"));
        item(kit, "North spare beam", Role.ANTENNA, 1, 1.9).setSpareFor(find(kit, "North crossed beam"));
        return kit;
    }

    /** The kit with a gap: nothing stands in for its antenna. */
    private Kit eastKit() {
        Kit kit = kit("East");
        item(kit, "East spare radio", Role.RADIO, 1, 2.4).setSpareFor(find(kit, "East dual-band radio"));
        return kit;
    }

    /** What every team has. */
    private static void station(Kit kit, String label) {
        KitItem radio = item(kit, label + " dual-band radio", Role.RADIO, 1, 2.4);
        radio.setNeeded(true);
        radio.setDrawsW(14);
        radio.setTransmitsW(20);
        KitItem beam = item(kit, label + " crossed beam", Role.ANTENNA, 1, 1.9);
        beam.setNeeded(true);
        beam.setGainDbi(10);
        beam.setRaisedM(2.6);
        KitItem cables = item(kit, label + " cable set", Role.FEEDLINE, 1, 0.9);
        cables.setNeeded(true);
        item(kit, label + " spare cable set", Role.FEEDLINE, 1, 0.8).setSpareFor(cables);
        KitItem battery = battery(kit, label + " battery");
        battery.setNeeded(true);
        battery(kit, label + " second battery").setSpareFor(battery);
        KitItem computer = item(kit, label + " field computer", Role.COMPUTER, 1, 1.6, WorkMode.LINEAR, WorkMode.DATA);
        computer.setDrawsW(18);
        item(kit, label + " voice recorder", Role.RECORDER, 1, 0.1);
        item(kit, label + " position receiver", Role.NAVIGATION, 1, 0.2);
        item(kit, label + " headset", Role.AUDIO, 2, 0.2);
        roadside(kit, label);
        item(kit, label + " tool roll", Role.TOOL, 1, 2.2);
        item(kit, label + " flask and blankets", Role.COMFORT, 1, 3.0);
    }

    /** For three people beside fast traffic; enough for lines and corners, and for a mild day. */
    private static void roadside(Kit kit, String label) {
        KitItem vests = item(kit, label + " vests", Role.SAFETY, 3, 0.3);
        vests.setSafetyUse(SafetyUse.VEST);
        vests.setVestClass(3);
        item(kit, label + " first aid bag", Role.SAFETY, 1, 1.4).setSafetyUse(SafetyUse.FIRST_AID);
        KitItem tape = item(kit, label + " tape", Role.SAFETY, 1, 0.4);
        tape.setSafetyUse(SafetyUse.TAPE);
        tape.setTapeM(25);
        item(kit, label + " cones", Role.SAFETY, 4, 0.5).setSafetyUse(SafetyUse.CONE);
        KitItem water = item(kit, label + " water can", Role.COMFORT, 2, 6.2);
        water.setSafetyUse(SafetyUse.WATER);
        water.setWaterLitres(6);
    }

    private static KitItem battery(Kit kit, String name) {
        KitItem battery = item(kit, name, Role.POWER, 1, 2.9);
        // 12.8 V and 20 Ah.
        battery.setStoresWh(256);
        battery.setChemistry(Chemistry.LITHIUM_IRON_PHOSPHATE);
        battery.setOwner("Skerry Radio Circle");
        return battery;
    }

    private Kit kit(String label) {
        Kit kit = DemoIdentity.named(Fresh.kit(), "kit/" + label);
        kit.setName(label + " kit");
        station(kit, label);
        event.getKits().add(kit);
        return kit;
    }

    private static KitItem item(Kit kit, String name, Role role, int count, double weightKg, WorkMode... modes) {
        KitItem item = DemoIdentity.named(Fresh.kitItem(name, role), "item/" + kit.getName() + "/" + name);
        item.setCount(count);
        item.setWeightKg(weightKg);
        item.getModes().addAll(Arrays.asList(modes));
        item.setBag(switch (role) {
            case RADIO, AUDIO, COMPUTER, RECORDER, NAVIGATION -> "radio bag";
            case ANTENNA, FEEDLINE, TOOL -> "mast bag";
            case POWER -> "power box";
            case SAFETY, COMFORT -> "road box";
        });
        kit.getItems().add(item);
        return item;
    }

    private static KitItem find(Kit kit, String name) {
        return kit.getItems().stream().filter(item -> item.getName().equals(name)).findFirst().orElseThrow();
    }
}
