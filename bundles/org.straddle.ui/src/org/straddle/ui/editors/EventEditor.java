package org.straddle.ui.editors;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.exchange.start.StillMissing;
import org.straddle.model.Chaser;
import org.straddle.model.Contact;
import org.straddle.model.ContactRole;
import org.straddle.model.Demand;
import org.straddle.model.DrivingSide;
import org.straddle.model.Event;
import org.straddle.model.FigureRange;
import org.straddle.model.ExposureLimits;
import org.straddle.model.Forecast;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Layer;
import org.straddle.model.EnteredDrive;
import org.straddle.model.Region;
import org.straddle.model.RiskLevel;
import org.straddle.model.Site;
import org.straddle.model.SitesTaken;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.model.naming.PolicyText;
import org.straddle.ui.fields.Allowances;
import org.straddle.ui.fields.CallSigns;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Notation;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.RiskMatrices;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.fields.SquareNames;
import org.straddle.ui.fields.Words;
import org.straddle.ui.fields.ZoneNames;
import org.straddle.ui.importing.AddLayer;
import org.straddle.ui.importing.ImportChasers;
import org.straddle.words.Catalogue;
import org.straddle.worth.NeededSquare;

/** The event's name and days, its demand, its announcement, and the figures that the coordinator chose. */
public final class EventEditor extends ThingEditor<Event> {

    private static final Catalogue TEXTS = Catalogue.of(EventEditor.class);

    /** Squares and call signs that a line has room for. */
    private static final int MOST_SQUARES = 12;
    private static final int MOST_NAMES = 3;

    public EventEditor() {
        super(Event.class);
    }

    @Override
    void fields(FieldForm form, Event event) {
        if (!StillMissing.of(event).isEmpty()) {
            form.wide(TEXTS.text("eventEditor.section.missing"), "");
            form.told("", () -> TEXTS.text("eventEditor.missing", "count", StillMissing.of(event).size(),
                    "lines", String.join("\n", StillMissing.of(event))));
        }
        form.section(TEXTS.text("eventEditor.section.event"), "");
        form.text(TEXTS.text("eventEditor.name"), "", Words.required(TEXTS.text("eventEditor.name.required")), event, Literals.EVENT__NAME);
        form.text(TEXTS.text("eventEditor.club"), "", Words.any(), event, Literals.EVENT__CLUB);
        form.text(TEXTS.text("eventEditor.firstDay"), TEXTS.text("eventEditor.firstDay.unit"), new Dates(), event, Literals.EVENT__FIRST_DAY);
        form.text(TEXTS.text("eventEditor.lastDay"), TEXTS.text("eventEditor.lastDay.unit"), new Dates(), event, Literals.EVENT__LAST_DAY);
        form.text(TEXTS.text("eventEditor.timeZone"),
                "", new ZoneNames(event::getFirstDay, event::getLastDay), event, Literals.EVENT__ZONE)
                .completes(ZoneNames::known);

        form.tall(TEXTS.text("eventEditor.section.demand"), TEXTS.text("eventEditor.section.demand.description"), 2);
        form.<Demand>table(event, Literals.EVENT__DEMANDS, StraddleFactory.eINSTANCE::createDemand, 13)
                .column(TEXTS.text("eventEditor.column.square"), 110, Literals.DEMAND__SQUARE, SquareNames.one())
                .column(TEXTS.text("eventEditor.column.stillNeededBy"), 140, Literals.DEMAND__SHARE_PERCENT, Numbers.between(0, 100));

        form.wide(TEXTS.text("eventEditor.section.chasers"), TEXTS.text("eventEditor.section.chasers.description"));
        form.<Chaser>table(event, Literals.EVENT__CHASER_LIST, StraddleFactory.eINSTANCE::createChaser, 8)
                .column(TEXTS.text("eventEditor.column.callSign"), 110, Literals.CHASER__CALL_SIGN,
                        CallSigns.required(TEXTS.text("eventEditor.column.callSign.required")))
                .column(TEXTS.text("eventEditor.column.locator"), 90, Literals.CHASER__LOCATOR, Words.any())
                .column(TEXTS.text("eventEditor.column.squaresNeeded"), 450, Literals.CHASER__SQUARES, new SquareNames());
        form.button(TEXTS.text("eventEditor.importChasers"), TEXTS.text("eventEditor.importChasers.tooltip"),
                () -> ImportChasers.ask(getSite().getShell()));
        form.told(TEXTS.text("eventEditor.neededMost"), () -> neededMost(event));

        form.wide(TEXTS.text("eventEditor.section.regions"), TEXTS.text("eventEditor.section.regions.description"));
        form.<Region>table(event, Literals.EVENT__REGIONS, Fresh::region, 5)
                .column(TEXTS.text("eventEditor.column.region"), 150, Literals.REGION__NAME, Words.required(TEXTS.text("eventEditor.column.region.required")))
                .column(TEXTS.text("eventEditor.column.chasers"), 90, Literals.REGION__SHARE_PERCENT, Numbers.between(0, 100))
                .column(TEXTS.text("eventEditor.column.squares"), 150, Literals.REGION__SQUARES, new SquareNames())
                .column(TEXTS.text("eventEditor.column.outlineWktLongitudeLatitude"), 260, Literals.REGION__OUTLINE, Words.any());

        form.wide(TEXTS.text("eventEditor.section.mapLayers"), TEXTS.text("eventEditor.section.mapLayers.description"));
        form.<Layer>table(event, Literals.EVENT__LAYERS, 4)
                .column(TEXTS.text("eventEditor.column.title"), 200, Literals.LAYER__TITLE, Words.any())
                .options(TEXTS.text("eventEditor.column.allOfItIs"), 200, Literals.LAYER__ROLE, () -> roles(event), EventEditor::role)
                .check(TEXTS.text("eventEditor.column.visible"), 70, Literals.LAYER__VISIBLE)
                .check(TEXTS.text("eventEditor.column.coordinatesSwapped"), 185, Literals.LAYER__SWAPPED)
                .column(TEXTS.text("eventEditor.column.fileInTheFolderLayers"), 220, Layer::getFile);
        form.button(TEXTS.text("eventEditor.addMapLayer"), TEXTS.text("eventEditor.addMapLayer.tooltip"),
                () -> AddLayer.ask(getSite().getShell()));

        form.section(TEXTS.text("eventEditor.section.announcement"), TEXTS.text("eventEditor.section.announcement.description"));
        form.lines(TEXTS.text("eventEditor.text"), 7, event, Literals.EVENT__ANNOUNCEMENT_TEXT);

        form.section(TEXTS.text("eventEditor.section.driving"), "");
        figure(form, event, Literals.POLICIES__ROAD_SPEED_KMH);
        figure(form, event, Literals.POLICIES__DETOUR_FACTOR);
        figure(form, event, Literals.POLICIES__DRIVING_LIMIT_MINUTES);
        figure(form, event, Literals.POLICIES__BREAK_AFTER_MINUTES);
        figure(form, event, Literals.POLICIES__BREAK_MINUTES);

        form.wide(TEXTS.text("eventEditor.section.drives"), TEXTS.text("eventEditor.section.drives.description"));
        form.<EnteredDrive>table(event, Literals.EVENT__ENTERED_DRIVES, StraddleFactory.eINSTANCE::createEnteredDrive, 4)
                .options(TEXTS.text("eventEditor.column.between"), 180, Literals.ENTERED_DRIVE__FROM, () -> ends(event), EventEditor::end)
                .options(TEXTS.text("eventEditor.column.and"), 180, Literals.ENTERED_DRIVE__TO, () -> ends(event), EventEditor::end)
                .column(TEXTS.text("eventEditor.column.minutesAtTheWheel"), 180, Literals.ENTERED_DRIVE__MINUTES, Numbers.between(0, 1440))
                .column(TEXTS.text("eventEditor.column.roadKm"), 90, Literals.ENTERED_DRIVE__ROAD_KM, Numbers.orUnknown(0, 5000))
                .column(TEXTS.text("eventEditor.column.knownFrom"), 180, Literals.ENTERED_DRIVE__ORIGIN, Words.any());

        form.wide(TEXTS.text("eventEditor.section.licencesByPlace"), TEXTS.text("eventEditor.section.licencesByPlace.description"));
        form.<Jurisdiction>table(event, Literals.EVENT__JURISDICTIONS, Fresh::jurisdiction, 4)
                .column(TEXTS.text("eventEditor.column.place"), 130, Literals.JURISDICTION__NAME, Words.required(TEXTS.text("eventEditor.column.place.required")))
                .column(TEXTS.text("eventEditor.column.squares"), 120, Literals.JURISDICTION__SQUARES, new SquareNames())
                .column(TEXTS.text("eventEditor.column.outlineWktLongitudeLatitude"), 270, Literals.JURISDICTION__OUTLINE, Words.any())
                .check(TEXTS.text("eventEditor.column.uplinkAllowed"), 140, Literals.JURISDICTION__UPLINK_ALLOWED)
                .column(TEXTS.text("eventEditor.column.classesAndBands"), 220, Literals.JURISDICTION__ALLOWANCES, new Allowances())
                .column(TEXTS.text("eventEditor.column.emergencyNumber"), 150, Literals.JURISDICTION__EMERGENCY_NUMBER, Words.any())
                .choice(TEXTS.text("eventEditor.column.exposureLimits"), 150, Literals.JURISDICTION__EXPOSURE_LIMITS, ExposureLimits.VALUES)
                .choice(TEXTS.text("eventEditor.column.drivingSide"), 120, Literals.JURISDICTION__DRIVING_SIDE, DrivingSide.VALUES)
                .column(TEXTS.text("eventEditor.column.drivingLimit"), 150, Literals.JURISDICTION__DRIVING_LIMIT_MINUTES, Numbers.orUnknown(0, 1440))
                .column(TEXTS.text("eventEditor.column.breakAfter"), 150, Literals.JURISDICTION__BREAK_AFTER_MINUTES, Numbers.orUnknown(0, 1440))
                .column(TEXTS.text("eventEditor.column.clothingClass"), 130, Literals.JURISDICTION__CLOTHING_CLASS, Numbers.whole(0, 3))
                .column(TEXTS.text("eventEditor.column.localRules"), 260, Literals.JURISDICTION__LOCAL_RULES, Words.any())
                .column(TEXTS.text("eventEditor.column.rulesSource"), 220, Literals.JURISDICTION__RULES_SOURCE, Words.any());

        form.section(TEXTS.text("eventEditor.section.stop"), "");
        figure(form, event, Literals.POLICIES__SET_UP_MINUTES);
        figure(form, event, Literals.POLICIES__TAKE_DOWN_MINUTES);
        figure(form, event, Literals.POLICIES__TURN_GAP_MINUTES);
        figure(form, event, Literals.POLICIES__MINIMUM_TURN_MINUTES);
        figure(form, event, Literals.POLICIES__MINIMUM_PEAK_ELEVATION_DEG);
        figure(form, event, Literals.POLICIES__REACH_ELEVATION_DEG);
        figure(form, event, Literals.POLICIES__USABLE_ENERGY_PERCENT);
        figure(form, event, Literals.POLICIES__COLDEST_DEG_C);
        check(form, event, Literals.POLICIES__FULL_DUPLEX_ON_LINEAR);
        check(form, event, Literals.POLICIES__LONE_OPERATOR_ALLOWED);

        form.section(TEXTS.text("eventEditor.section.worth"), TEXTS.text("eventEditor.section.worth.description"));
        figure(form, event, Literals.POLICIES__CHASERS);
        figure(form, event, Literals.POLICIES__CALLERS_PERCENT);
        figure(form, event, Literals.POLICIES__FM_CONTACTS_PER_MINUTE);
        figure(form, event, Literals.POLICIES__LINEAR_CONTACTS_PER_MINUTE);
        figure(form, event, Literals.POLICIES__DATA_CONTACTS_PER_MINUTE);
        figure(form, event, Literals.POLICIES__LOW_MINUTE_PERCENT);
        figure(form, event, Literals.POLICIES__FULL_VIEW_DEG);
        figure(form, event, Literals.POLICIES__BIRD_WORKED_LATELY_PERCENT);
        figure(form, event, Literals.POLICIES__WORKED_LATELY_DAYS);
        figure(form, event, Literals.POLICIES__BIRD_WORKING_PERCENT);
        figure(form, event, Literals.POLICIES__BIRD_UNKNOWN_PERCENT);
        figure(form, event, Literals.POLICIES__BIRD_INTERMITTENT_PERCENT);
        figure(form, event, Literals.POLICIES__BIRD_HEARD_ONLY_PERCENT);
        figure(form, event, Literals.POLICIES__BIRD_NOT_HEARD_PERCENT);
        figure(form, event, Literals.POLICIES__TURN_HAPPENS_PERCENT);
        figure(form, event, Literals.POLICIES__UNREADY_SITE_PERCENT);
        figure(form, event, Literals.POLICIES__SUREST_CONTACT_PERCENT);
        figure(form, event, Literals.POLICIES__TOO_OFTEN_PERCENT);

        form.section(TEXTS.text("eventEditor.section.holds"), TEXTS.text("eventEditor.section.holds.description"));
        figure(form, event, Literals.POLICIES__IN_HAND_MINUTES);
        figure(form, event, Literals.POLICIES__DRIVE_SURENESS_PERCENT);
        figure(form, event, Literals.POLICIES__COMPUTED_DRIVE_SPREAD_PERCENT);
        figure(form, event, Literals.POLICIES__KNOWN_DRIVE_SPREAD_PERCENT);
        figure(form, event, Literals.POLICIES__LEAST_KEEPING_PERCENT);
        figure(form, event, Literals.POLICIES__LONGEST_DUTY_MINUTES);
        figure(form, event, Literals.POLICIES__LEAST_REST_MINUTES);
        figure(form, event, Literals.POLICIES__MEAL_MINUTES);
        figure(form, event, Literals.POLICIES__LONGEST_STOP_MINUTES);
        choice(form, event, SitesTaken.VALUES, Literals.POLICIES__SITES_TAKEN);
        form.section(TEXTS.text("eventEditor.section.checkIn"), "");
        figure(form, event, Literals.POLICIES__CHECK_IN_MINUTES);
        figure(form, event, Literals.POLICIES__MISSED_CHECK_IN_MINUTES);
        form.text(PolicyText.of(Literals.POLICIES__RISK_MATRIX).label(), "", new RiskMatrices(),
                this.<String>policy(event, Literals.POLICIES__RISK_MATRIX)).example(TEXTS.text("eventEditor.riskMatrix.example"));
        form.help(PolicyText.of(Literals.POLICIES__RISK_MATRIX).help());
        choice(form, event, RiskLevel.VALUES, Literals.POLICIES__HIGHEST_RISK);

        form.wide(TEXTS.text("eventEditor.section.contacts"), TEXTS.text("eventEditor.section.contacts.description"));
        form.<Contact>table(event, Literals.EVENT__CONTACTS, StraddleFactory.eINSTANCE::createContact, 4)
                .choice(TEXTS.text("eventEditor.column.role"), 150, Literals.CONTACT__ROLE, ContactRole.VALUES)
                .column(TEXTS.text("eventEditor.column.name"), 220, Literals.CONTACT__NAME, Words.any())
                .column(TEXTS.text("eventEditor.column.reach"), 220, Literals.CONTACT__REACH, Words.any())
                .column(TEXTS.text("eventEditor.column.note"), 220, Literals.CONTACT__NOTE, Words.any());
        form.wide(TEXTS.text("eventEditor.section.forecasts"), TEXTS.text("eventEditor.section.forecasts.description"));
        form.<Forecast>table(event, Literals.EVENT__FORECASTS, () -> forecast(event), 4)
                .column(TEXTS.text("eventEditor.column.day"), 110, Literals.FORECAST__DAY, new Dates())
                .options(TEXTS.text("eventEditor.column.site"), 150, Literals.FORECAST__SITE, () -> sites(event), EventEditor::site)
                .column(TEXTS.text("eventEditor.column.warmest"), 90, Literals.FORECAST__WARMEST_DEG_C, Numbers.optional(-60, 60))
                .column(TEXTS.text("eventEditor.column.coldest"), 90, Literals.FORECAST__COLDEST_DEG_C, Numbers.optional(-60, 60))
                .column(TEXTS.text("eventEditor.column.humidity"), 100, Literals.FORECAST__HUMIDITY_PERCENT, Numbers.optional(0, 100))
                .column(TEXTS.text("eventEditor.column.wind"), 100, Literals.FORECAST__WIND_KMH, Numbers.optional(0, 300))
                .check(TEXTS.text("eventEditor.column.thunder"), 90, Literals.FORECAST__THUNDER)
                .column(TEXTS.text("eventEditor.column.source"), 160, Literals.FORECAST__SOURCE, Words.any());

        form.section(TEXTS.text("eventEditor.section.presenceInSquares"), "");
        figure(form, event, Literals.POLICIES__LEAST_PRESENCE);
        figure(form, event, Literals.POLICIES__STATION_SPAN_M);

        form.section(TEXTS.text("eventEditor.section.howLongThingsStayCurrent"), "");
        figure(form, event, Literals.POLICIES__VISIT_AGE_LIMIT_DAYS);
        figure(form, event, Literals.POLICIES__REVIEW_VALIDITY_DAYS);
        figure(form, event, Literals.POLICIES__ELEMENT_SET_AGE_LIMIT_DAYS);
        figure(form, event, Literals.POLICIES__LOW_ELEMENT_SET_AGE_LIMIT_DAYS);
    }

    private static String neededMost(Event event) {
        List<NeededSquare> needed = NeededSquare.of(event);
        return TEXTS.text("eventEditor.neededMost.of", "squares", needed.size(), "more", Math.max(0, needed.size() - MOST_SQUARES),
                "names", needed.stream().limit(MOST_SQUARES).map(each -> TEXTS.text("eventEditor.neededMost.square",
                        "square", each.square().name(), "chasers", each.callSigns().size(),
                        "names", each.callSigns().stream().limit(MOST_NAMES).toList(),
                        "others", Math.max(0, each.callSigns().size() - MOST_NAMES))).toList());
    }

    private static Forecast forecast(Event event) {
        Forecast forecast = StraddleFactory.eINSTANCE.createForecast();
        forecast.setDay(event.getFirstDay());
        return forecast;
    }

    private static List<Site> sites(Event event) {
        return Stream.concat(Stream.of((Site) null), event.getSites().stream()).toList();
    }

    private static String site(Site site) {
        return site == null ? TEXTS.text("eventEditor.site.all") : Naming.name(site);
    }

    private static List<Identified> ends(Event event) {
        return Stream.<Identified>concat(event.getBases().stream(), event.getSites().stream()).toList();
    }

    private static String end(Identified place) {
        return place == null ? TEXTS.text("eventEditor.place.none") : Naming.name(place);
    }

    /** The usual roles, and those of one's own that the event has already. */
    private static List<String> roles(Event event) {
        return Stream.concat(LayerRole.USUAL.stream().map(LayerRole::word),
                event.getLayers().stream().map(Layer::getRole).filter(Objects::nonNull)).distinct().toList();
    }

    private static String role(String word) {
        return LayerRole.stored(word).label();
    }

    /** Takes what the model declares of the figure, and what the catalogue of names says of it. */
    private void figure(FieldForm form, Event event, EAttribute figure) {
        PolicyText words = PolicyText.of(figure);
        FigureRange range = FigureRange.of(figure).orElseThrow();
        if (figure.getDefaultValue() instanceof Integer) {
            form.text(words.label(), words.unit(), Numbers.whole((int) range.least(), (int) range.most()), policy(event, figure));
        } else {
            form.text(words.label(), words.unit(), Numbers.between(range.least(), range.most()), policy(event, figure));
        }
        form.help(words.help());
    }

    private void check(FieldForm form, Event event, EAttribute policy) {
        form.check(PolicyText.of(policy).label(), policy(event, policy));
        form.help(PolicyText.of(policy).help());
    }

    private <E extends Enumerator> void choice(FieldForm form, Event event, List<E> values, EAttribute policy) {
        form.choice(PolicyText.of(policy).label(), values, this.<E>policy(event, policy));
        form.help(PolicyText.of(policy).help());
    }

    private <T> Slot<T> policy(Event event, EStructuralFeature feature) {
        return Slot.inside(session(), event, Literals.EVENT__POLICIES, feature);
    }
}
