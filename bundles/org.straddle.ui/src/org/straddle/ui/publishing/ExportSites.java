package org.straddle.ui.publishing;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.sites.SiteWriter;
import org.straddle.model.Site;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Writes all sites of the event into a file for spreadsheets, receivers or maps. */
public final class ExportSites {

    private static final Catalogue TEXTS = Catalogue.of(ExportSites.class);

    private static final String TITLE = TEXTS.text("exportSites.title");

    private ExportSites() {
    }

    public static void ask(Shell shell) {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        List<Site> sites = session.event().getSites();
        if (sites.isEmpty()) {
            MessageDialog.openInformation(shell, TITLE, TEXTS.text("exportSites.none"));
            return;
        }
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TITLE);
        SiteWriter.Format[] formats = SiteWriter.Format.values();
        dialog.setFilterExtensions(new String[] {"*.csv", "*.gpx", "*.geojson"});
        dialog.setFilterNames(new String[] {TEXTS.text("exportSites.csv"), TEXTS.text("exportSites.gpx"), TEXTS.text("exportSites.geojson")});
        dialog.setFileName("sites.csv");
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        SiteWriter.Format format = formats[Math.max(0, dialog.getFilterIndex())];
        for (SiteWriter.Format each : formats) {
            format = chosen.toLowerCase(Locale.ROOT).endsWith(each.extension()) ? each : format;
        }
        write(shell, sites, Path.of(chosen), format);
    }

    private static void write(Shell shell, List<Site> sites, Path file, SiteWriter.Format format) {
        try {
            String text = SiteWriter.write(sites, format);
            FileWork.run(shell, TEXTS.text("exportSites.writing",
                    "file", file.getFileName()), () -> Files.writeString(file, text, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException unplaced) {
            MessageDialog.openError(shell, TITLE, unplaced.getMessage());
        }
    }
}
