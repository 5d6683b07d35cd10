package org.straddle.ui.passes;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.model.naming.Naming;
import org.straddle.sky.Pass;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Writes passes for a spreadsheet: full instants and plain numbers, whatever the table shows (RFC 4180). */
final class PassCsv {

    private static final Catalogue TEXTS = Catalogue.of(PassCsv.class);

    private PassCsv() {
    }

    static void ask(Shell shell, List<PassRow> rows) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TEXTS.text("passCsv.title"));
        dialog.setFileName("passes.csv");
        dialog.setFilterExtensions(new String[] {"*.csv"});
        dialog.setOverwrite(true);
        String file = dialog.open();
        if (file != null) {
            FileWork.run(shell, TEXTS.text("passCsv.writing",
                    "file", Path.of(file).getFileName()), () -> write(Path.of(file), rows));
        }
    }

    static void write(Path file, List<PassRow> rows) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader("site", "bird", "aos_utc", "tca_utc", "los_utc",
                "aos_local", "duration_s", "aos_azimuth_deg", "tca_azimuth_deg", "los_azimuth_deg",
                "peak_elevation_deg", "worked_by").get();
        try (Writer out = Files.newBufferedWriter(file); CSVPrinter lines = new CSVPrinter(out, format)) {
            for (PassRow row : rows) {
                Pass pass = row.found().pass();
                lines.printRecord(Naming.name(row.found().site()), Naming.name(row.found().bird()), pass.aos(),
                        pass.tca(), pass.los(), pass.aos().atZone(row.zone()).toOffsetDateTime(),
                        pass.duration().toSeconds(), pass.aosAzimuthDeg(), pass.tcaAzimuthDeg(),
                        pass.losAzimuthDeg(), pass.peakElevationDeg(), row.workedBy());
            }
        }
    }
}
