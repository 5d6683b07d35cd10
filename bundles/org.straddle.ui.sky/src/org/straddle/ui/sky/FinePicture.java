package org.straddle.ui.sky;

import java.io.ByteArrayOutputStream;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Display;

/** A drawing as a PNG file, three times as fine as on the screen, which prints well. */
final class FinePicture {

    private static final int FINE = 3;

    private FinePicture() {
    }

    static byte[] png(Display display, int width, int height, Consumer<GC> drawing) {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {data(display, width, height, drawing)};
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        loader.save(bytes, SWT.IMAGE_PNG);
        return bytes.toByteArray();
    }

    private static ImageData data(Display display, int width, int height, Consumer<GC> drawing) {
        Image image = new Image(display, width * FINE, height * FINE);
        GC gc = new GC(image);
        Transform larger = new Transform(display);
        try {
            larger.scale(FINE, FINE);
            gc.setTransform(larger);
            drawing.accept(gc);
            return image.getImageData();
        } finally {
            larger.dispose();
            gc.dispose();
            image.dispose();
        }
    }
}
