package org.straddle.exchange.elements;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.words.Catalogue;

/** Files about the sky that a user chose together, sorted by what is in them. */
public record SkyFiles(List<ElementFile> elements, List<OrientationFile> orientation) {

    private static final Catalogue TEXTS = Catalogue.of(SkyFiles.class);

    public SkyFiles {
        elements = List.copyOf(elements);
        orientation = List.copyOf(orientation);
    }

    /**
     * Reads all files; long work, without the event, for any thread.
     *
     * @throws ReadException on the first file that cannot be taken; then none is
     */
    public static SkyFiles read(List<Path> paths, IProgressMonitor monitor) throws ReadException {
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("skyFiles.readingElementSets"), paths.size());
        List<ElementFile> elements = new ArrayList<>();
        List<OrientationFile> orientation = new ArrayList<>();
        for (Path path : paths) {
            progress.checkCanceled();
            progress.subTask(path.getFileName().toString());
            SourceFile source = SourceFile.read(path);
            Optional<OrientationFile> turning = OrientationFile.read(source);
            if (turning.isPresent()) {
                orientation.add(turning.get());
            } else {
                elements.add(ElementSetReader.read(source));
            }
            progress.worked(1);
        }
        return new SkyFiles(elements, orientation);
    }
}
