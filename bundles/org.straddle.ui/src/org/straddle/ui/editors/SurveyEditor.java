package org.straddle.ui.editors;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.FileDialog;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Mark;
import org.straddle.model.MarkMethod;
import org.straddle.model.OverheadLine;
import org.straddle.model.Photo;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Survey;
import org.straddle.outlook.things.ThingText;
import org.straddle.outlook.things.Times;
import org.straddle.safety.Cautions;
import org.straddle.safety.SafetyNotes;
import org.straddle.store.EventFolderException;
import org.straddle.store.KeptFile;
import org.straddle.survey.AveragedMark;
import org.straddle.survey.SurveyPhoto;
import org.straddle.survey.Visit;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.fields.Deed;
import org.straddle.ui.fields.ErrorRadii;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Notation;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Positions;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.fields.TableField;
import org.straddle.ui.fields.Words;
import org.straddle.ui.horizon.HorizonCanvas;
import org.straddle.ui.workbench.FileWork;
import org.straddle.ui.workbench.Problem;

/**
 * One visit to a site: what somebody saw there on one day. Only the newest visit is open for editing; an older one is
 * kept as it was, unless somebody says that it is wrong.
 */
public final class SurveyEditor extends ThingEditor<Survey> {

    private HorizonCanvas horizon;
    private TableField<Photo> photos;
    private boolean corrected;

    public SurveyEditor() {
        super(Survey.class);
    }

    private Site site() {
        return (Site) thing().eContainer();
    }

    @Override
    void fields(FieldForm form, Survey visit) {
        visit(form, visit);
        access(form, visit);
        mark(form, visit);
        horizon(form, visit);
        overheadLines(form, visit);
        hazards(form, visit);
        photos(form, visit);
        form.track(this::lockOldVisit);
    }

    private void visit(FieldForm form, Survey visit) {
        form.section("Visit", "What somebody saw on one day.");
        form.told("Site", () -> site() == null ? "" : ThingText.of(site()));
        form.told("State", () -> !isHistory() ? "Open for editing." : corrected ? "An older visit, being corrected."
                : "An older visit: it is kept as it was seen then.");
        Button correct = form.buttons(Deed.looking("Show the site", "Open the site of this visit", () -> session().reveal(site())),
                Deed.looking("Correct this visit", "Open an older visit for editing because it is wrong", this::correct)).get(1);
        form.track(() -> correct.setEnabled(isHistory() && !corrected));
        form.text("Date", "", new Dates(), visit, Literals.SURVEY__DATE);
        form.text("Surveyor", "", Words.any(), visit, Literals.SURVEY__SURVEYOR);
        form.text("Holds until", "", new Dates(), visit, Literals.SURVEY__EXPIRES);
        form.lines("Note", 4, visit, Literals.SURVEY__NOTE);
    }

    private void access(FieldForm form, Survey visit) {
        form.section("Place", "How one gets there, and what one finds.");
        form.lines("Access", 2, visit, Literals.SURVEY__ACCESS);
        form.text("Allowed by", "", Words.any(), visit, Literals.SURVEY__ALLOWED_BY);
        form.text("Allowed until", "", new Dates(), visit, Literals.SURVEY__ACCESS_UNTIL);
        form.text("Parking", "", Words.any(), visit, Literals.SURVEY__PARKING);
        form.text("Surface", "", Words.any(), visit, Literals.SURVEY__SURFACE);
        form.text("Phone coverage", "", Words.any(), visit, Literals.SURVEY__PHONE_COVERAGE);
        form.text("Traffic", "km/h on the road beside, 0 for none", Numbers.between(0, 250), visit, Literals.SURVEY__ROAD_SPEED_KMH);
    }

    private void mark(FieldForm form, Survey visit) {
        form.section("Mark", "Where the mark was at this visit, on WGS 84.");
        form.text("Position", "", new Positions(), new Slot<>(
                () -> visit.getMark() == null ? null : Marks.position(visit.getMark().getLatitudeDeg(), visit.getMark().getLongitudeDeg()),
                place -> Visit.setMark(session().editingDomain(), visit, typed(visit, place))));
        form.text("Mark error", "m, and which radius", new ErrorRadii(), ofMark(visit, Literals.MARK__ERROR_M));
        form.text("Height", "m above the ellipsoid", Numbers.between(-500, 9000), ofMark(visit, Literals.MARK__ALTITUDE_M));
        form.told("How fixed", () -> MarkText.how(visit.getMark()));
        Button use = form.buttons(
                Deed.of("Average a file…", "Take the mean of fixes out of GPX files or NMEA logs", this::averageFiles),
                Deed.of("Average typed…", "Take the mean of fixes that you type", this::averageTyped),
                Deed.of("Use for the site", "Make this mark the mark of the site", () -> session().execute(
                        Visit.useMark(session().editingDomain(), site(), visit)))).get(2);
        form.track(() -> use.setEnabled(!form.locked() && site() != null && visit.getMark() != null && !Visit.markInUse(site(), visit)));
        form.section("What the mark allows", "");
        form.told("By this mark", () -> MarkText.allows(session(), visit.getMark()));
        form.told("Claimed", () -> site() == null ? "" : site().getKind().getLiteral() + ": " + String.join(" ", site().getSquares()));
        form.told("Apart", () -> site() == null ? "" : MarkText.apart(site(), visit.getMark()));
    }

    private Slot<Double> ofMark(Survey visit, EAttribute feature) {
        return new Slot<>(() -> visit.getMark() == null ? null : (Double) visit.getMark().eGet(feature), value -> {
            Mark mark = visit.getMark() == null
                    ? typed(visit, Marks.position(site().getLatitudeDeg(), site().getLongitudeDeg())) : EcoreUtil.copy(visit.getMark());
            mark.eSet(feature, value);
            return Visit.setMark(session().editingDomain(), visit, mark);
        });
    }

    /** A typed mark has no fixes behind it; error and height stay, or start as those of the site. */
    private Mark typed(Survey visit, GeoPosition place) {
        Mark before = visit.getMark();
        Mark mark = StraddleFactory.eINSTANCE.createMark();
        mark.setMethod(MarkMethod.TYPED);
        mark.setErrorM(before == null ? site().getMarkErrorM() : before.getErrorM());
        mark.setAltitudeM(before == null ? site().getAltitudeM() : before.getAltitudeM());
        if (place != null) {
            mark.setLatitudeDeg(place.latitudeDeg());
            mark.setLongitudeDeg(place.longitudeDeg());
        }
        return mark;
    }

    private void averageFiles() {
        List<Path> files = chosen("Fixes: GPX files or NMEA logs");
        AveragedFixes.ofFiles(getSite().getShell(), files).ifPresent(this::take);
    }

    private void averageTyped() {
        AveragedFixes.typed(getSite().getShell()).ifPresent(this::take);
    }

    private void take(AveragedMark mean) {
        session().execute(Visit.setMark(session().editingDomain(), thing(), mean.mark(site().getAltitudeM())));
    }

    private void horizon(FieldForm form, Survey visit) {
        form.wide("Horizon", "Least elevation at which the sky is free. Click to add a point, drag to move it; keys: Page Up and Down,"
                + " arrows (with Shift finer), Insert, Delete.");
        horizon = form.own(parent -> new HorizonCanvas(parent, visit::getHorizon,
                () -> site() == null ? List.of() : site().getHorizon(), "in use at the site", "nobody looked at this visit",
                points -> HorizonForm.drawn(session(), visit, points)), () -> HorizonForm.refresh(horizon), 230);
        form.told("How found", () -> Objects.requireNonNullElse(visit.getHorizonOrigin(), "–"));
        List<Button> buttons = HorizonForm.buttons(form, visit, visit::getHorizon, this::lookFrom,
                Deed.of("Use for the site", "Make this mask the horizon of the site", () -> session().execute(
                        Visit.useHorizon(session().editingDomain(), site(), visit))));
        Button use = buttons.get(buttons.size() - 1);
        form.track(() -> use.setEnabled(!form.locked() && site() != null && !Visit.horizonInUse(site(), visit)));
    }

    private Optional<GeoPosition> lookFrom() {
        Mark mark = thing().getMark();
        return Optional.ofNullable(mark != null ? Marks.position(mark.getLatitudeDeg(), mark.getLongitudeDeg())
                : Marks.position(site().getLatitudeDeg(), site().getLongitudeDeg()));
    }

    private void overheadLines(FieldForm form, Survey visit) {
        form.wide("Overhead wires", "Power, telephone and other wires near the mark; 0 where nobody knows. A voltage counts as"
                + " known only where the owner named it: a guess keeps farther away.");
        form.text("Mast limit", "m, nothing upright is higher; 0 for none", Numbers.between(0, 100), visit,
                Literals.SURVEY__MAST_LIMIT_M);
        form.<OverheadLine>table(visit, Literals.SURVEY__OVERHEAD_LINES, "wires",
                StraddleFactory.eINSTANCE::createOverheadLine, 3)
                .column("Distance, m", 110, Literals.OVERHEAD_LINE__DISTANCE_M, Numbers.between(0, 10_000))
                .column("Lowest wire, m", 120, Literals.OVERHEAD_LINE__HEIGHT_M, Numbers.between(0, 300))
                .column("Voltage, kV", 110, Literals.OVERHEAD_LINE__VOLTAGE_KV, Numbers.between(0, 2000))
                .check("Owner named it", 130, Literals.OVERHEAD_LINE__VOLTAGE_FROM_OWNER)
                .column("Note", 290, Literals.OVERHEAD_LINE__NOTE, Words.any());
        form.told("Usual cautions", () -> String.join(" ", Cautions.of(HazardKind.POWER_LINE)) + " " + SafetyNotes.DEFERENCE);
    }

    private void hazards(FieldForm form, Survey visit) {
        form.wide("Hazards", "What may hurt somebody there, and what the team does about it. Local rules and people on the spot"
                + " come first.");
        form.<Hazard>table(visit, Literals.SURVEY__HAZARDS, "hazard", StraddleFactory.eINSTANCE::createHazard, 4)
                .choice("Kind", 120, Literals.HAZARD__KIND, HazardKind.VALUES)
                .column("What", 300, Literals.HAZARD__DESCRIPTION, Words.any())
                .column("Distance, m", 110, Literals.HAZARD__DISTANCE_M, Numbers.between(0, 100_000))
                .column("Measure", 380, Literals.HAZARD__MEASURE, Words.any());
    }

    private void photos(FieldForm form, Survey visit) {
        form.wide("Photos", "Kept in the event's folder under the hash of their content, with what they say of place, direction and"
                + " time.");
        photos = form.<Photo>table(visit, Literals.SURVEY__PHOTOS, "photo", 4)
                .column("Caption", 300, Literals.PHOTO__CAPTION, Words.any())
                .column("Where", 210, photo -> SurveyPhoto.where(photo, lookFrom().orElse(null)))
                .column("Bearing, °", 100, Literals.PHOTO__BEARING_DEG, new OptionalBearing())
                .column("Taken (UTC)", 150, photo -> photo.getTakenAt() == null ? "–" : Times.utcEntry(photo.getTakenAt()))
                .column("File", 220, Photo::getFile);
        photos.viewer().addOpenListener(open -> openPhoto());
        form.buttons(Deed.of("Add photos…", "Copy pictures into the event with the next save", this::addPhotos),
                Deed.looking("Open photo", "Show the chosen photo in the program for its kind", this::openPhoto));
    }

    private void addPhotos() {
        List<Path> files = chosen("Photos: JPEG, PNG, WebP or HEIF");
        List<SurveyPhoto> read = new ArrayList<>();
        if (files.isEmpty() || !FileWork.run(getSite().getShell(), "Reading photos", () -> {
            for (Path file : files) {
                read.add(SurveyPhoto.read(file));
            }
        })) {
            return;
        }
        try {
            session().execute(SurveyPhoto.command(session().editingDomain(), session().folder(), thing(), read));
        } catch (EventFolderException failure) {
            Problem.show(getSite().getShell(), failure.getMessage(), failure);
            return;
        }
        List<String> remarks = read.stream().flatMap(photo -> photo.remarks().stream().map(remark -> photo.name() + ": " + remark)).toList();
        if (!remarks.isEmpty()) {
            MessageDialog.openInformation(getSite().getShell(), "Photos", String.join("\n", remarks));
        }
    }

    private void openPhoto() {
        if (!(photos.viewer().getStructuredSelection().getFirstElement() instanceof Photo photo) || photo.getFile() == null) {
            return;
        }
        KeptFile kept = session().folder().photo(photo.getFile());
        Path file = kept.onDisk().orElse(null);
        if (!SurveyPhoto.isPictureName(photo.getFile())) {
            // The system would run it, or open it with who knows what.
            MessageDialog.openError(getSite().getShell(), "Photo", "The file " + photo.getFile() + " is no picture by its name,"
                    + " so it is not opened.");
        } else if (file != null && !kept.exists()) {
            MessageDialog.openError(getSite().getShell(), "Photo", "The event's folder of photos has no file " + photo.getFile()
                    + ".\n\nPut it back from a copy, or remove the photo.");
        } else if (file == null) {
            MessageDialog.openInformation(getSite().getShell(), "Photo", "The photo is copied into the event with the next save.\n\nSave"
                    + " the event, then open it.");
        } else if (!Program.launch(file.toString())) {
            MessageDialog.openError(getSite().getShell(), "Photo", "No program shows this kind of picture here.\n\nThe file is " + file
                    + ".");
        }
    }

    private List<Path> chosen(String title) {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(title);
        return dialog.open() == null ? List.of()
                : Stream.of(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name)).toList();
    }

    private boolean isHistory() {
        return site() != null && Visit.isHistory(site(), thing());
    }

    private void correct() {
        corrected = true;
        lockOldVisit();
        form().refresh();
    }

    private void lockOldVisit() {
        boolean lock = isHistory() && !corrected;
        if (lock != form().locked()) {
            form().lock(lock);
            horizon.setEditable(!lock);
        }
    }

    /** A bearing, or nothing. */
    private static final class OptionalBearing implements Notation<Double> {

        @Override
        public String print(Double value) {
            return value == null ? "" : Numbers.plain(value);
        }

        @Override
        public Double parse(String text) {
            return text.isBlank() ? null : Numbers.between(0, 360).parse(text);
        }
    }
}
