package org.straddle.exchange.start;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.elements.ElementFile;
import org.straddle.exchange.elements.ElementImport;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.sky.ElementSet;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

/**
 * All that is asked of a new event, each part blank until it is answered. The event is made of it anew whenever somebody
 * asks, and nothing is on the disk before {@link #create}.
 *
 * @param zone      IANA name; null when it is not known
 * @param bases     one on a line, like the other texts
 * @param stationSpanM how far apart two parts of a station stand, metres: what its claim on a line or corner rests on
 * @param elements  files of element sets
 * @param downlinks where the birds of these files are heard
 */
public record EventStart(String name, String club, LocalDate firstDay, LocalDate lastDay, String zone, String bases,
        String operators, String teams, String sites, double stationSpanM, List<ElementFile> elements, String downlinks, String demand) {

    /** A team's day until somebody says otherwise, local time. */
    private static final LocalTime MORNING = LocalTime.of(8, 0);
    private static final LocalTime EVENING = LocalTime.of(20, 0);

    /** An event of more days was not meant. */
    private static final int LONGEST_DAYS = 31;

    public EventStart {
        elements = List.copyOf(elements);
    }

    public ReadLines<Base> readBases() {
        return PlaceLines.bases(bases);
    }

    public ReadLines<Operator> readOperators() {
        return CrewLines.operators(operators);
    }

    public ReadLines<Team> readTeams() {
        return CrewLines.teams(teams, readOperators().things(), readBases().things());
    }

    /** What each claims by its position, and whether that can be argued with a station of that span. */
    public ReadLines<Site> readSites() {
        ReadLines<Site> read = PlaceLines.sites(sites, stationSpanM);
        Event alone = Fresh.event(name);
        alone.getPolicies().setStationSpanM(stationSpanM);
        alone.getSites().addAll(read.things());
        return PlaceLines.argued(read, Outlook.of(alone, null));
    }

    /** How the lines of downlinks were understood. */
    public ReadLines<?> readDownlinks() {
        return DownlinkLines.read(downlinks, birds());
    }

    public ReadLines<List<Demand>> readDemand() {
        return DemandLines.read(demand);
    }

    /** Names of the birds that the element sets are of, each once. */
    public List<String> birds() {
        return elements.stream().flatMap(file -> file.sets().stream()).map(ElementSet::label).distinct().toList();
    }

    /** A line for each bird of the element sets, for somebody to write its downlink behind it; what stands there stays. */
    public String downlinksToFill() {
        StringBuilder text = new StringBuilder(downlinks.strip());
        for (String bird : birds()) {
            if (downlinks.lines().noneMatch(line -> line.toLowerCase(Locale.ROOT)
                    .startsWith(bird.toLowerCase(Locale.ROOT) + ":"))) {
                text.append(text.length() > 0 ? "\n" : "").append(bird).append(": ");
            }
        }
        return text.toString();
    }

    /** The event as far as it was answered, without what cannot be read; its element sets come with {@link #bringElements}. */
    public Event event() {
        Event event = Fresh.event(name, zone, firstDay, lastDay);
        event.getPolicies().setStationSpanM(stationSpanM);
        event.setClub(club == null || club.isBlank() ? null : club.strip());
        List<Base> theBases = readBases().things();
        List<Operator> theOperators = readOperators().things();
        List<Team> theTeams = CrewLines.teams(teams, theOperators, theBases).things();
        event.getBases().addAll(theBases);
        event.getOperators().addAll(theOperators);
        event.getTeams().addAll(theTeams);
        theTeams.forEach(team -> giveDays(team, event));
        event.getSites().addAll(readSites().things());
        readDemand().things().forEach(event.getDemands()::addAll);
        return event;
    }

    /** What the event would lack, its element sets counted in. */
    public List<String> missing() {
        Event event = event();
        for (ElementFile file : elements) {
            ElementImport.into(event, List.of(file), number -> true).additions().stream()
                    .map(ElementImport.Addition::bird).distinct().filter(bird -> bird.eContainer() == null).forEach(bird -> {
                        bird.getElementSets().add(StraddleFactory.eINSTANCE.createBirdElements());
                        event.getBirds().add(bird);
                    });
        }
        tellDownlinks(event);
        return Stream.concat(StillMissing.of(event).stream(), StillMissing.of(readSites()).stream()).toList();
    }

    /** Writes the event into a folder that is new or empty, without its element sets. */
    public EventFolder create(Path folder) throws EventFolderException {
        return EventFolder.create(folder, event());
    }

    /** Brings the birds of the element sets into the event that was made, with what is known of them, and saves it. */
    public void bringElements(EventFolder created) throws EventFolderException {
        if (!elements.isEmpty()) {
            EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
            domain.getCommandStack().execute(ElementImport.into(created.event(), elements, number -> true)
                    .command(domain, created, Instant.now()));
            tellDownlinks(created.event());
            created.save();
        }
    }

    private void tellDownlinks(Event event) {
        for (DownlinkLines.Heard heard : DownlinkLines.read(downlinks, birds()).things()) {
            for (Bird bird : event.getBirds()) {
                if (heard.bird().equalsIgnoreCase(bird.getName()) && heard.downlink() != null) {
                    bird.setDownlink(heard.downlink());
                    bird.setMode(heard.mode());
                    bird.setAccess(heard.access());
                }
            }
        }
    }

    private static void giveDays(Team team, Event event) {
        TeamDay first = team.getDays().get(0);
        team.getDays().clear();
        if (event.getFirstDay() == null || event.getLastDay() == null) {
            return;
        }
        ZoneId zone = Outlook.zoneOf(event);
        event.getFirstDay().datesUntil(event.getLastDay().plusDays(1)).limit(LONGEST_DAYS).forEach(date -> {
            TeamDay day = Fresh.teamDay(date.atTime(MORNING).atZone(zone).toInstant(),
                    date.atTime(EVENING).atZone(zone).toInstant());
            // One who goes from a base to another starts the next day from there.
            day.setStart(team.getDays().isEmpty() ? first.getStart() : first.getEnd());
            day.setEnd(first.getEnd());
            team.getDays().add(day);
        });
    }
}
