package org.straddle.ui.editors;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.fixes.FixLog;
import org.straddle.exchange.fixes.FixReader;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.PositionText;
import org.straddle.visit.AveragedMark;
import org.straddle.ui.fields.Positions;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Asks for fixes, says what their mean is and how good, and gives it if the user wants it. */
final class AveragedFixes {

    private static final Catalogue TEXTS = Catalogue.of(AveragedFixes.class);

    private AveragedFixes() {
    }

    static Optional<AveragedMark> ofFiles(Shell shell, List<Path> files) {
        List<FixLog> logs = new ArrayList<>();
        List<AveragedMark> mean = new ArrayList<>();
        if (files.isEmpty() || !FileWork.run(shell, TEXTS.text("averagedFixes.reading"), () -> {
            for (Path file : files) {
                logs.add(FixReader.read(file, new NullProgressMonitor()));
            }
            try {
                mean.add(AveragedMark.of(logs.stream().flatMap(log -> log.readings().stream()).toList()));
            } catch (IllegalArgumentException refused) {
                throw new ReadException(logs.get(0).name(), 0, refused.getMessage(), TEXTS.text("averagedFixes.unchanged"));
            }
        })) {
            return Optional.empty();
        }
        return offered(shell, mean.get(0), logs.stream().flatMap(log -> log.remarks().stream()).toList());
    }

    static Optional<AveragedMark> typed(Shell shell) {
        TypedFixes dialog = new TypedFixes(shell);
        return dialog.open() == TypedFixes.OK ? offered(shell, dialog.mean, List.of()) : Optional.empty();
    }

    private static Optional<AveragedMark> offered(Shell shell, AveragedMark mean, List<String> remarks) {
        String words = TEXTS.text("averagedFixes.mean", "position", new Positions().print(mean.position()),
                "sentences", String.join("\n", mean.sentences()));
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("averagedFixes.title"), remarks.isEmpty() ? words
                : TEXTS.text("averagedFixes.mean.remarks", "mean", words, "remarks", String.join("\n", remarks)), SWT.NONE,
                TEXTS.text("averagedFixes.take"), TEXTS.text("averagedFixes.cancel"));
        return answer == 0 ? Optional.of(mean) : Optional.empty();
    }

    /** One position on each line. */
    private static final class TypedFixes extends QuestionDialog {

        private Text text;
        private AveragedMark mean;

        TypedFixes(Shell parent) {
            super(parent, TEXTS.text("averagedFixes.typed"), TEXTS.text("averagedFixes.typed.explanation"),
                    TEXTS.text("averagedFixes.typed.average"), 1);
        }

        @Override
        protected void fields(Composite body) {
            text = new Text(body, SWT.BORDER | SWT.MULTI | SWT.V_SCROLL);
            GridDataFactory.fillDefaults().grab(true, true).hint(420, 180).applyTo(text);
            text.addListener(SWT.Modify, typed -> answered());
        }

        @Override
        protected boolean complete() {
            List<FixLog.Reading> readings = new ArrayList<>();
            String[] lines = text.getText().split("\\R");
            try {
                for (int i = 0; i < lines.length; i++) {
                    if (!lines[i].isBlank()) {
                        readings.add(new FixLog.Reading(Optional.empty(), position(i, lines[i]), OptionalDouble.empty(),
                                OptionalDouble.empty()));
                    }
                }
                mean = readings.isEmpty() ? null : AveragedMark.of(readings);
                setErrorMessage(null);
            } catch (IllegalArgumentException refused) {
                mean = null;
                setErrorMessage(refused.getMessage());
            }
            return mean != null;
        }

        private static GeoPosition position(int index, String line) {
            try {
                return PositionText.read(line).position();
            } catch (IllegalArgumentException refused) {
                throw new IllegalArgumentException(TEXTS.text("averagedFixes.line", "line", index + 1,
                        "problem", refused.getMessage()), refused);
            }
        }
    }
}
