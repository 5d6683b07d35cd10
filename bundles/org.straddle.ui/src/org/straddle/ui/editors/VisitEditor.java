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
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Visit;
import org.straddle.model.naming.Naming;
import org.straddle.safety.Cautions;
import org.straddle.safety.SafetyNotes;
import org.straddle.store.EventFolderException;
import org.straddle.store.KeptFile;
import org.straddle.visit.AveragedMark;
import org.straddle.visit.VisitPhoto;
import org.straddle.visit.SiteVisits;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.fields.Deed;
import org.straddle.ui.fields.ErrorRadii;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Notation;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Positions;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.fields.TableField;
import org.straddle.ui.fields.Words;
import org.straddle.ui.horizon.HorizonCanvas;
import org.straddle.ui.work.FileWork;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/**
 * One visit to a site: what somebody saw there on one day. Only the newest visit is open for editing; an older one is
 * kept as it was, unless somebody says that it is wrong.
 */
public final class VisitEditor extends ThingEditor<Visit> {

    private static final Catalogue TEXTS = Catalogue.of(VisitEditor.class);

    private HorizonCanvas horizon;
    private TableField<Photo> photos;
    private boolean corrected;

    public VisitEditor() {
        super(Visit.class);
    }

    private Site site() {
        return (Site) thing().eContainer();
    }

    @Override
    void fields(FieldForm form, Visit visit) {
        visit(form, visit);
        access(form, visit);
        mark(form, visit);
        horizon(form, visit);
        overheadLines(form, visit);
        hazards(form, visit);
        photos(form, visit);
        form.track(this::lockOldVisit);
    }

    private void visit(FieldForm form, Visit visit) {
        form.section(TEXTS.text("visitEditor.section.visit"), TEXTS.text("visitEditor.section.visit.description"));
        form.told(TEXTS.text("visitEditor.site"), () -> site() == null ? "" : Naming.name(site()));
        form.told(TEXTS.text("visitEditor.state"), () -> !isHistory() ? TEXTS.text("visitEditor.state.open") : corrected
                ? TEXTS.text("visitEditor.state.corrected")
                : TEXTS.text("visitEditor.state.old"));
        Button correct = form.buttons(Deed.looking(
                TEXTS.text("visitEditor.showTheSite"), TEXTS.text("visitEditor.showTheSite.tooltip"), () -> session().reveal(site())),
                Deed.looking(TEXTS.text("visitEditor.correctThisVisit"), TEXTS.text("visitEditor.correctThisVisit.tooltip"), this::correct)).get(1);
        form.track(() -> correct.setEnabled(isHistory() && !corrected));
        form.text(TEXTS.text("visitEditor.date"), "", new Dates(), visit, Literals.VISIT__DATE);
        form.text(TEXTS.text("visitEditor.visitor"), "", Words.any(), visit, Literals.VISIT__VISITOR);
        form.text(TEXTS.text("visitEditor.holdsUntil"), "", new Dates(), visit, Literals.VISIT__EXPIRES);
        form.lines(TEXTS.text("visitEditor.note"), 4, visit, Literals.VISIT__NOTE);
    }

    private void access(FieldForm form, Visit visit) {
        form.section(TEXTS.text("visitEditor.section.place"), TEXTS.text("visitEditor.section.place.description"));
        form.lines(TEXTS.text("visitEditor.access"), 2, visit, Literals.VISIT__ACCESS);
        form.text(TEXTS.text("visitEditor.allowedBy"), "", Words.any(), visit, Literals.VISIT__ALLOWED_BY);
        form.text(TEXTS.text("visitEditor.allowedUntil"), "", new Dates(), visit, Literals.VISIT__ACCESS_UNTIL);
        form.text(TEXTS.text("visitEditor.parking"), "", Words.any(), visit, Literals.VISIT__PARKING);
        form.text(TEXTS.text("visitEditor.surface"), "", Words.any(), visit, Literals.VISIT__SURFACE);
        form.text(TEXTS.text("visitEditor.phoneCoverage"), "", Words.any(), visit, Literals.VISIT__PHONE_COVERAGE);
        form.lines(TEXTS.text("visitEditor.directions"), 2, visit, Literals.VISIT__DIRECTIONS);
        form.text(TEXTS.text("visitEditor.meetingPoint"), "", Words.any(), visit, Literals.VISIT__MEETING_POINT);
        form.text(TEXTS.text("visitEditor.nearestHospital"), "", Words.any(), visit, Literals.VISIT__NEAREST_HOSPITAL);
        form.text(TEXTS.text("visitEditor.nearestHelp"), "", Words.any(), visit, Literals.VISIT__NEAREST_HELP);
        form.text(TEXTS.text("visitEditor.traffic"), TEXTS.text("visitEditor.traffic.unit"), Numbers.between(0, 250), visit, Literals.VISIT__ROAD_SPEED_KMH);
    }

    private void mark(FieldForm form, Visit visit) {
        form.section(TEXTS.text("visitEditor.section.mark"), TEXTS.text("visitEditor.section.mark.description"));
        form.text(TEXTS.text("visitEditor.position"), "", new Positions(), new Slot<>(
                () -> visit.getMark() == null ? null : Marks.position(visit.getMark().getLatitudeDeg(), visit.getMark().getLongitudeDeg()),
                place -> SiteVisits.setMark(session().editingDomain(), visit, typed(visit, place))));
        form.text(TEXTS.text("visitEditor.markError"), TEXTS.text("visitEditor.markError.unit"), new ErrorRadii(), ofMark(visit, Literals.MARK__ERROR_M));
        form.text(TEXTS.text("visitEditor.height"), TEXTS.text("visitEditor.height.unit"), Numbers.between(-500, 9000), ofMark(visit, Literals.MARK__ALTITUDE_M));
        form.told(TEXTS.text("visitEditor.howFixed"), () -> MarkText.how(visit.getMark()));
        Button use = form.buttons(
                Deed.of(TEXTS.text("visitEditor.averageFile"), TEXTS.text("visitEditor.averageFile.tooltip"), this::averageFiles),
                Deed.of(TEXTS.text("visitEditor.averageTyped"), TEXTS.text("visitEditor.averageTyped.tooltip"), this::averageTyped),
                Deed.of(TEXTS.text("visitEditor.useForTheSite"), TEXTS.text("visitEditor.useForTheSite.tooltip"), () -> session().execute(
                        SiteVisits.useMark(session().editingDomain(), site(), visit)))).get(2);
        form.track(() -> use.setEnabled(!form.locked() && site() != null && visit.getMark() != null && !SiteVisits.markInUse(site(), visit)));
        form.section(TEXTS.text("visitEditor.section.whatTheMarkAllows"), "");
        form.told(TEXTS.text("visitEditor.byThisMark"), () -> MarkText.allows(session(), visit.getMark()));
        form.told(TEXTS.text("visitEditor.claimed"), () -> site() == null ? "" : TEXTS.text("visitEditor.squares",
                "kind", Naming.of(site().getKind()), "squares", String.join(" ", site().getSquares())));
        form.told(TEXTS.text("visitEditor.apart"), () -> site() == null ? "" : MarkText.apart(site(), visit.getMark()));
    }

    private Slot<Double> ofMark(Visit visit, EAttribute feature) {
        return new Slot<>(() -> visit.getMark() == null ? null : (Double) visit.getMark().eGet(feature), value -> {
            Mark mark = visit.getMark() == null
                    ? typed(visit, Marks.position(site().getLatitudeDeg(), site().getLongitudeDeg())) : EcoreUtil.copy(visit.getMark());
            mark.eSet(feature, value);
            return SiteVisits.setMark(session().editingDomain(), visit, mark);
        });
    }

    /** A typed mark has no fixes behind it; error and height stay, or start as those of the site. */
    private Mark typed(Visit visit, GeoPosition place) {
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
        List<Path> files = chosen(TEXTS.text("visitEditor.fixes"));
        AveragedFixes.ofFiles(getSite().getShell(), files).ifPresent(this::take);
    }

    private void averageTyped() {
        AveragedFixes.typed(getSite().getShell()).ifPresent(this::take);
    }

    private void take(AveragedMark mean) {
        session().execute(SiteVisits.setMark(session().editingDomain(), thing(), mean.mark(site().getAltitudeM())));
    }

    private void horizon(FieldForm form, Visit visit) {
        form.wide(TEXTS.text("visitEditor.section.horizon"), TEXTS.text("visitEditor.section.horizon.description"));
        horizon = form.own(parent -> new HorizonCanvas(parent, visit::getHorizon,
                () -> site() == null ? List.of() : site().getHorizon(), TEXTS.text("visitEditor.horizon.other"), TEXTS.text("visitEditor.horizon.none"),
                points -> HorizonForm.drawn(session(), visit, points)), () -> HorizonForm.refresh(horizon), 230);
        form.told(TEXTS.text("visitEditor.howFound"), () -> Objects.requireNonNullElse(visit.getHorizonOrigin(), "–"));
        List<Button> buttons = HorizonForm.buttons(form, visit, visit::getHorizon, this::lookFrom,
                Deed.of(TEXTS.text("visitEditor.useHorizon"), TEXTS.text("visitEditor.useHorizon.tooltip"), () -> session().execute(
                        SiteVisits.useHorizon(session().editingDomain(), site(), visit))));
        Button use = buttons.get(buttons.size() - 1);
        form.track(() -> use.setEnabled(!form.locked() && site() != null && !SiteVisits.horizonInUse(site(), visit)));
    }

    private Optional<GeoPosition> lookFrom() {
        Mark mark = thing().getMark();
        return Optional.ofNullable(mark != null ? Marks.position(mark.getLatitudeDeg(), mark.getLongitudeDeg())
                : Marks.position(site().getLatitudeDeg(), site().getLongitudeDeg()));
    }

    private void overheadLines(FieldForm form, Visit visit) {
        form.wide(TEXTS.text("visitEditor.section.overheadWires"), TEXTS.text("visitEditor.section.overheadWires.description"));
        form.text(TEXTS.text("visitEditor.mastLimit"), TEXTS.text("visitEditor.mastLimit.unit"), Numbers.between(0, 100), visit,
                Literals.VISIT__MAST_LIMIT_M);
        form.<OverheadLine>table(visit, Literals.VISIT__OVERHEAD_LINES,
                StraddleFactory.eINSTANCE::createOverheadLine, 3)
                .column(TEXTS.text("visitEditor.column.distanceM"), 110, Literals.OVERHEAD_LINE__DISTANCE_M, Numbers.between(0, 10_000))
                .column(TEXTS.text("visitEditor.column.lowestWireM"), 120, Literals.OVERHEAD_LINE__HEIGHT_M, Numbers.between(0, 300))
                .column(TEXTS.text("visitEditor.column.voltageKV"), 110, Literals.OVERHEAD_LINE__VOLTAGE_KV, Numbers.between(0, 2000))
                .check(TEXTS.text("visitEditor.column.ownerNamedIt"), 130, Literals.OVERHEAD_LINE__VOLTAGE_FROM_OWNER)
                .column(TEXTS.text("visitEditor.column.note"), 290, Literals.OVERHEAD_LINE__NOTE, Words.any());
        form.told(TEXTS.text("visitEditor.usualCautions"), () -> TEXTS.text("visitEditor.usualCautions.told",
                "cautions", String.join(" ", Cautions.of(HazardKind.POWER_LINE)), "deference", SafetyNotes.DEFERENCE));
    }

    private void hazards(FieldForm form, Visit visit) {
        form.wide(TEXTS.text("visitEditor.section.hazards"), TEXTS.text("visitEditor.section.hazards.description"));
        form.<Hazard>table(visit, Literals.VISIT__HAZARDS, StraddleFactory.eINSTANCE::createHazard, 4)
                .choice(TEXTS.text("visitEditor.column.kind"), 120, Literals.HAZARD__KIND, HazardKind.VALUES)
                .column(TEXTS.text("visitEditor.column.what"), 220, Literals.HAZARD__DESCRIPTION, Words.any())
                .column(TEXTS.text("visitEditor.column.distanceM"), 110, Literals.HAZARD__DISTANCE_M, Numbers.between(0, 100_000))
                .choice(TEXTS.text("visitEditor.column.severity"), 110, Literals.HAZARD__SEVERITY, RiskSeverity.VALUES)
                .choice(TEXTS.text("visitEditor.column.probability"), 110, Literals.HAZARD__PROBABILITY, RiskProbability.VALUES)
                .column(TEXTS.text("visitEditor.column.measure"), 260, Literals.HAZARD__MEASURE, Words.any())
                .column(TEXTS.text("visitEditor.column.owner"), 110, Literals.HAZARD__OWNER, Words.any())
                .choice(TEXTS.text("visitEditor.column.severityLeft"), 140, Literals.HAZARD__SEVERITY_LEFT, RiskSeverity.VALUES)
                .choice(TEXTS.text("visitEditor.column.probabilityLeft"), 140, Literals.HAZARD__PROBABILITY_LEFT, RiskProbability.VALUES);
    }

    private void photos(FieldForm form, Visit visit) {
        form.wide(TEXTS.text("visitEditor.section.photos"), TEXTS.text("visitEditor.section.photos.description"));
        photos = form.<Photo>table(visit, Literals.VISIT__PHOTOS, 4)
                .column(TEXTS.text("visitEditor.column.caption"), 300, Literals.PHOTO__CAPTION, Words.any())
                .column(TEXTS.text("visitEditor.column.where"), 210, photo -> VisitPhoto.where(photo, lookFrom().orElse(null)))
                .column(TEXTS.text("visitEditor.column.bearing"), 100, Literals.PHOTO__BEARING_DEG, new OptionalBearing())
                .column(TEXTS.text("visitEditor.column.takenUtc"), 150, photo -> photo.getTakenAt() == null ? "–" : Instants.in(session().event()).print(photo.getTakenAt()))
                .column(TEXTS.text("visitEditor.column.file"), 220, Photo::getFile);
        photos.viewer().addOpenListener(open -> openPhoto());
        form.buttons(Deed.of(TEXTS.text("visitEditor.addPhotos"), TEXTS.text("visitEditor.addPhotos.tooltip"), this::addPhotos),
                Deed.looking(TEXTS.text("visitEditor.openPhoto"), TEXTS.text("visitEditor.openPhoto.tooltip"), this::openPhoto));
    }

    private void addPhotos() {
        List<Path> files = chosen(TEXTS.text("visitEditor.photos.choose"));
        List<VisitPhoto> read = new ArrayList<>();
        if (files.isEmpty() || !FileWork.run(getSite().getShell(), TEXTS.text("visitEditor.photos.reading"), () -> {
            for (Path file : files) {
                read.add(VisitPhoto.read(file));
            }
        })) {
            return;
        }
        try {
            session().execute(VisitPhoto.command(session().editingDomain(), session().folder(), thing(), read));
        } catch (EventFolderException failure) {
            Problem.show(getSite().getShell(), failure.getMessage(), failure);
            return;
        }
        List<String> remarks = read.stream().flatMap(photo -> photo.remarks().stream().map(remark -> TEXTS.text("visitEditor.photos.remark",
                "photo", photo.name(), "remark", remark))).toList();
        if (!remarks.isEmpty()) {
            MessageDialog.openInformation(getSite().getShell(), TEXTS.text("visitEditor.photos.title"), String.join("\n", remarks));
        }
    }

    private void openPhoto() {
        if (!(photos.viewer().getStructuredSelection().getFirstElement() instanceof Photo photo) || photo.getFile() == null) {
            return;
        }
        KeptFile kept = session().folder().photo(photo.getFile());
        Path file = kept.onDisk().orElse(null);
        if (!VisitPhoto.isPictureName(photo.getFile())) {
            // The system would run it, or open it with who knows what.
            MessageDialog.openError(getSite().getShell(), TEXTS.text("visitEditor.photo.title"), TEXTS.text("visitEditor.photo.nopicture",
                    "file", photo.getFile()));
        } else if (file != null && !kept.exists()) {
            MessageDialog.openError(getSite().getShell(), TEXTS.text("visitEditor.photo.title"), TEXTS.text("visitEditor.photo.missing",
                    "file", photo.getFile()));
        } else if (file == null) {
            MessageDialog.openInformation(getSite().getShell(), TEXTS.text("visitEditor.photo.title"), TEXTS.text("visitEditor.photo.unsaved"));
        } else if (!Program.launch(file.toString())) {
            MessageDialog.openError(getSite().getShell(), TEXTS.text("visitEditor.photo.title"), TEXTS.text("visitEditor.photo.noprogram",
                    "file", file));
        }
    }

    private List<Path> chosen(String title) {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(title);
        return dialog.open() == null ? List.of()
                : Stream.of(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name)).toList();
    }

    private boolean isHistory() {
        return site() != null && SiteVisits.isHistory(site(), thing());
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
