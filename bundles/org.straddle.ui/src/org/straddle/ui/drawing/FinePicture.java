package org.straddle.ui.drawing;

import java.io.ByteArrayOutputStream;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Display;

/** A drawing as a PNG file, finer than on the screen, which prints well. */
public final class FinePicture {

    private static final int MOST_PX = 12_000;

    private FinePicture() {
    }

    /** @param fine how many times as fine; once if it would be too large otherwise */
    public static byte[] png(Display display, int width, int height, int fine, Consumer<GC> drawing) {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {data(display, width, height, Math.max(width, height) * fine > MOST_PX ? 1 : fine, drawing)};
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        loader.save(bytes, SWT.IMAGE_PNG);
        return bytes.toByteArray();
    }

    private static ImageData data(Display display, int width, int height, int fine, Consumer<GC> drawing) {
        Image image = new Image(display, width * fine, height * fine);
        GC gc = new GC(image);
        Transform larger = new Transform(display);
        try {
            larger.scale(fine, fine);
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
