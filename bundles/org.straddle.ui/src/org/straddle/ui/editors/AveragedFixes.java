package org.straddle.ui.editors;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.straddle.survey.AveragedMark;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.ui.workbench.FileWork;

/** Asks for fixes, says what their mean is and how good, and gives it if the user wants it. */
final class AveragedFixes {

    private AveragedFixes() {
    }

    static Optional<AveragedMark> ofFiles(Shell shell, List<Path> files) {
        List<FixLog> logs = new ArrayList<>();
        List<AveragedMark> mean = new ArrayList<>();
        if (files.isEmpty() || !FileWork.run(shell, "Reading fixes", () -> {
            for (Path file : files) {
                logs.add(FixReader.read(file, new NullProgressMonitor()));
            }
            try {
                mean.add(AveragedMark.of(logs.stream().flatMap(log -> log.readings().stream()).toList()));
            } catch (IllegalArgumentException refused) {
                throw new ReadException(logs.get(0).name(), 0, refused.getMessage(), "Nothing was changed.");
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
        String words = String.format(Locale.ROOT, "%.7f, %.7f", mean.position().latitudeDeg(), mean.position().longitudeDeg()) + "\n\n" + String.join("\n", mean.sentences())
                + (remarks.isEmpty() ? "" : "\n\n" + String.join("\n", remarks));
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, "Mean of fixes", words, SWT.NONE, "&Take as mark", "Cancel");
        return answer == 0 ? Optional.of(mean) : Optional.empty();
    }

    /** One position on each line. */
    private static final class TypedFixes extends QuestionDialog {

        private Text text;
        private AveragedMark mean;

        TypedFixes(Shell parent) {
            super(parent, "Average typed fixes", "One position on WGS 84 on each line, in any form, such as 64.123456, -21.123456.",
                    "&Average", 1);
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
                throw new IllegalArgumentException("Line " + (index + 1) + ": " + refused.getMessage(), refused);
            }
        }
    }
}
