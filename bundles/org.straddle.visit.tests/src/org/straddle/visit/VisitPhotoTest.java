package org.straddle.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

import javax.imageio.ImageIO;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.exchange.ReadException;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Photo;
import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.store.EventFolder;

class VisitPhotoTest {

    private static byte[] picture(String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    private static VisitPhoto photo(TinyExif exif) throws IOException {
        return VisitPhoto.of("view.jpg", exif.into(picture("jpg")));
    }

    /** 64°8′48″N 21°56′24″W is 64.146667, −21.94. */
    @Test
    void positionTimeAndTrueBearing() throws IOException {
        VisitPhoto photo = photo(new TinyExif().position(64, 8, 48, 'N', 21, 56, 24, 'W').direction('T', 21050)
                .gpsTime("2026:06:20", 12, 30, 15).local("2026:06:20 14:30:15"));
        assertEquals(64.146667, photo.position().orElseThrow().latitudeDeg(), 1e-6);
        assertEquals(-21.94, photo.position().orElseThrow().longitudeDeg(), 1e-9);
        assertEquals(OptionalDouble.of(210.5), photo.bearingDeg());
        assertEquals(Optional.of(Instant.parse("2026-06-20T12:30:15Z")), photo.takenAt());
        assertEquals(List.of(), photo.remarks());
    }

    @Test
    void aMagneticBearingIsNotTrueAndNotKept() throws IOException {
        VisitPhoto photo = photo(new TinyExif().direction('M', 9000));
        assertEquals(OptionalDouble.empty(), photo.bearingDeg());
        assertTrue(photo.remarks().get(0).contains("90° by a magnetic compass"), photo.remarks().toString());
    }

    @Test
    void localTimeCountsOnlyWithItsZone() throws IOException {
        VisitPhoto bare = photo(new TinyExif().local("2026:06:20 14:30:15"));
        assertEquals(Optional.empty(), bare.takenAt());
        assertTrue(bare.remarks().get(0).contains("without a zone"), bare.remarks().toString());
        VisitPhoto zoned = photo(new TinyExif().local("2026:06:20 14:30:15").offset("+02:00"));
        assertEquals(Optional.of(Instant.parse("2026-06-20T12:30:15Z")), zoned.takenAt());
    }

    @Test
    void anotherDatumIsNotKept() throws IOException {
        VisitPhoto photo = photo(new TinyExif().position(64, 0, 0, 'N', 20, 0, 0, 'W').datum("TOKYO"));
        assertEquals(Optional.empty(), photo.position());
        assertTrue(photo.remarks().get(0).contains("TOKYO"));
    }

    @Test
    void aPictureThatSaysNothing() throws IOException {
        VisitPhoto photo = VisitPhoto.of("plain.png", picture("png"));
        assertEquals(Optional.empty(), photo.takenAt());
        assertEquals(Optional.empty(), photo.position());
        assertEquals(".png", photo.extension());
    }

    private static String refused(byte[] bytes) {
        return assertThrows(ReadException.class, () -> VisitPhoto.of("bad.jpg", bytes)).getMessage();
    }

    @Test
    void whatIsNoWholePictureIsRefused(@TempDir Path folder) throws IOException {
        byte[] whole = new TinyExif().position(64, 8, 48, 'N', 21, 56, 24, 'W').into(picture("jpg"));
        for (int length : new int[] {3, 20, 60, 200, whole.length / 2, whole.length - 3}) {
            assertTrue(refused(Arrays.copyOf(whole, length)).contains("\n"));
        }
        byte[] png = picture("png");
        assertTrue(refused(Arrays.copyOf(png, png.length - 1)).contains("truncated"));
        assertTrue(refused(new byte[0]).contains("empty"));
        assertTrue(refused("GIF89a no more".getBytes()).contains("not a picture"));
        byte[] noise = new byte[10_000];
        new Random(2).nextBytes(noise);
        assertTrue(refused(noise).contains("\n"));
        Path huge = folder.resolve("huge.jpg");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(100 << 20);
        }
        assertTrue(assertThrows(ReadException.class, () -> VisitPhoto.read(huge)).getMessage().contains("larger than"));
        assertThrows(ReadException.class, () -> VisitPhoto.read(folder));
    }

    @Test
    void theEventKeepsThePictureByItsContent(@TempDir Path folder) throws IOException {
        Event event = Fresh.event("Demo");
        Site site = Fresh.site();
        site.setName("A");
        Visit visit = Fresh.visit();
        site.getVisits().add(visit);
        event.getSites().add(site);
        byte[] bytes = new TinyExif().position(64, 0, 0, 'N', 20, 0, 0, 'W').into(picture("jpg"));
        VisitPhoto picture = VisitPhoto.of("view.jpg", bytes);
        try (EventFolder opened = EventFolder.create(folder.resolve("event"), event)) {
            EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
            Command command = VisitPhoto.command(domain, opened, visit, List.of(picture, picture));
            domain.getCommandStack().execute(command);
            assertEquals(1, visit.getPhotos().size(), "the same picture twice");
            assertTrue(!VisitPhoto.command(domain, opened, visit, List.of(picture)).canExecute(), "it is there already");
            domain.getCommandStack().undo();
            opened.save();
            assertTrue(!Files.exists(opened.path().resolve("photos")) || isEmpty(opened.path().resolve("photos")), "undone imports leave nothing");
            domain.getCommandStack().redo();
            opened.save();
            Photo photo = visit.getPhotos().get(0);
            assertTrue(photo.getFile().matches("[0-9a-f]{64}\\.jpg"), photo.getFile());
            assertEquals("view.jpg", photo.getCaption());
            opened.saveAs(folder.resolve("copy"));
            assertTrue(Arrays.equals(bytes, Files.readAllBytes(folder.resolve("copy/photos").resolve(photo.getFile()))));
            assertEquals("0 m from the mark", VisitPhoto.where(photo, new GeoPosition(64, -20)));
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
