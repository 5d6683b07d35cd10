package org.straddle.visit;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.ReadException;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.model.Photo;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Visit;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;

import com.drew.imaging.FileType;
import com.drew.imaging.FileTypeDetector;
import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.imaging.jpeg.JpegSegmentReader;
import com.drew.imaging.jpeg.JpegSegmentType;
import com.drew.lang.GeoLocation;
import com.drew.lang.Rational;
import com.drew.lang.StreamReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;

/**
 * A picture of a site with what it says of itself (Exif 2.32, CIPA DC-008): when, where, and in which direction.
 *
 * <p>Exif's own time is local and mostly says no zone: then the time of the positioning is used, which is UTC, or none.
 * A direction by a magnetic compass is not kept, since how far that is from true north depends on place and year.
 *
 * @param name of the file it came from
 * @param extension for the copy that is kept, with its dot
 * @param remarks what was left out, in sentences
 */
public record VisitPhoto(String name, byte[] bytes, String extension, Optional<Instant> takenAt, Optional<GeoPosition> position,
        OptionalDouble bearingDeg, List<String> remarks) {

    private static final Catalogue TEXTS = Catalogue.of(VisitPhoto.class);

    /** Telephones make pictures of 5 to 15 MB. */
    private static final int LARGEST_BYTES = 40 << 20;
    private static final String RIGHT_FILE = TEXTS.text("visitPhoto.choosePictureJpeg");
    private static final String AGAIN = TEXTS.text("visitPhoto.copyAgainFrom");
    private static final DateTimeFormatter EXIF_TIME = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT);

    /** @throws ReadException when it cannot be read, is no picture, truncated, or too large */
    public static VisitPhoto read(Path path) throws ReadException {
        String name = path.getFileName() == null ? path.toString() : path.getFileName().toString();
        if (!Files.isRegularFile(path)) {
            throw new ReadException(name, 0, Files.exists(path) ? TEXTS.text("visitPhoto.notPlainFile")
                    : TEXTS.text("visitPhoto.thereSuchFile"), RIGHT_FILE);
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = Files.size(path) > LARGEST_BYTES ? null : in.readNBytes(LARGEST_BYTES + 1);
            if (bytes == null || bytes.length > LARGEST_BYTES) {
                throw new ReadException(name, 0, TEXTS.text("visitPhoto.fileLargerThan",
                        "largestBytes", (LARGEST_BYTES >> 20)),
                        TEXTS.text("visitPhoto.savePictureSmaller"));
            }
            return of(name, bytes);
        } catch (ReadException e) {
            throw e;
        } catch (IOException e) {
            throw new ReadException(name, 0, TEXTS.text("visitPhoto.fileCannotRead", "reason", e.getMessage()),
                    TEXTS.text("visitPhoto.checkDiskYour"));
        }
    }

    /** As {@link #read}, for bytes that are at hand. */
    public static VisitPhoto of(String name, byte[] bytes) throws ReadException {
        try {
            FileType type = FileTypeDetector.detectFileType(new BufferedInputStream(new ByteArrayInputStream(bytes)));
            String extension = switch (type) {
                case Jpeg -> ".jpg";
                case Png -> ".png";
                case WebP -> ".webp";
                case Heif -> ".heic";
                default -> throw new ReadException(name, 0, bytes.length == 0 ? TEXTS.text("visitPhoto.fileEmpty")
                        : TEXTS.text("visitPhoto.notPicture"), RIGHT_FILE);
            };
            if (type == FileType.Jpeg && !PictureEnd.ofJpeg(bytes) || type == FileType.Png && !PictureEnd.ofPng(bytes)) {
                throw new ReadException(name, 0, TEXTS.text("visitPhoto.pictureTruncated"), AGAIN);
            }
            return described(name, bytes, extension, metadata(bytes, type));
        } catch (ReadException e) {
            throw e;
        } catch (ImageProcessingException | IOException | RuntimeException e) {
            throw new ReadException(name, 0, TEXTS.text("visitPhoto.pictureDamaged", "reason", e.getMessage()), AGAIN);
        }
    }

    private static Metadata metadata(byte[] bytes, FileType type) throws ImageProcessingException, IOException {
        try {
            return type == FileType.Jpeg ? exifOf(bytes)
                    : ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes), bytes.length, type);
        } catch (LinkageError e) {
            // The library asks another one for data in XMP, of which a part is not for others in OSGi.
            return new Metadata();
        }
    }

    /** Exif alone: the library's own way through a JPEG begins with its reader of XMP. */
    private static Metadata exifOf(byte[] bytes) throws JpegProcessingException, IOException {
        Metadata metadata = new Metadata();
        new ExifReader().readJpegSegments(JpegSegmentReader.readSegments(
                new StreamReader(new ByteArrayInputStream(bytes)), List.of(JpegSegmentType.APP1)).getSegments(JpegSegmentType.APP1),
                metadata, JpegSegmentType.APP1);
        return metadata;
    }

    private static VisitPhoto described(String name, byte[] bytes, String extension, Metadata metadata) {
        List<String> remarks = new ArrayList<>();
        GpsDirectory gps = metadata.getFirstDirectoryOfType(GpsDirectory.class);
        return new VisitPhoto(name, bytes, extension, time(metadata, gps, remarks), position(gps, remarks),
                bearing(gps, remarks), List.copyOf(remarks));
    }

    private static Optional<Instant> time(Metadata metadata, GpsDirectory gps, List<String> remarks) {
        Date positioned = gps == null ? null : gps.getGpsDate();
        if (positioned != null) {
            return Optional.of(positioned.toInstant());
        }
        ExifSubIFDDirectory exif = metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        String written = exif == null ? null : exif.getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL);
        if (written == null) {
            return Optional.empty();
        }
        String zone = exif.getString(ExifSubIFDDirectory.TAG_TIME_ZONE_ORIGINAL);
        if (zone == null || zone.isBlank()) {
            remarks.add(TEXTS.text("visitPhoto.saysLocalTime", "written", written.strip()));
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDateTime.parse(written.strip(), EXIF_TIME).toInstant(ZoneOffset.of(zone.strip())));
        } catch (DateTimeException e) {
            remarks.add(TEXTS.text("visitPhoto.itsTimeCannot", "written", written.strip(), "zone", zone.strip()));
            return Optional.empty();
        }
    }

    private static Optional<GeoPosition> position(GpsDirectory gps, List<String> remarks) {
        GeoLocation location = gps == null ? null : gps.getGeoLocation();
        // Some cameras write 0, 0 while they have no fix.
        if (location == null || location.isZero()) {
            return Optional.empty();
        }
        String datum = gps.getString(GpsDirectory.TAG_MAP_DATUM);
        if (datum != null && !datum.isBlank() && !datum.replaceAll("[^\\p{Alnum}]", "").equalsIgnoreCase("WGS84")) {
            remarks.add(TEXTS.text("visitPhoto.itsPositionDatum", "datum", datum.strip()));
            return Optional.empty();
        }
        try {
            return Optional.of(new GeoPosition(location.getLatitude(), location.getLongitude()));
        } catch (IllegalArgumentException e) {
            remarks.add(TEXTS.text("visitPhoto.itsPositionNowhere"));
            return Optional.empty();
        }
    }

    private static OptionalDouble bearing(GpsDirectory gps, List<String> remarks) {
        Rational direction = gps == null ? null : gps.getRational(GpsDirectory.TAG_IMG_DIRECTION);
        if (direction == null || direction.getDenominator() == 0 || !(direction.doubleValue() >= 0 && direction.doubleValue() <= 360)) {
            return OptionalDouble.empty();
        }
        String reference = gps.getString(GpsDirectory.TAG_IMG_DIRECTION_REF);
        if (reference != null && reference.strip().equalsIgnoreCase("T")) {
            return OptionalDouble.of(direction.doubleValue() % 360);
        }
        remarks.add(TEXTS.text("visitPhoto.takenTowardsTrue", "doubleValue", direction.doubleValue(),
                "reference", reference != null && reference.strip().equalsIgnoreCase("M")
                ? TEXTS.text("visitPhoto.magneticCompass") : TEXTS.text("visitPhoto.compassDoesNot")));
        return OptionalDouble.empty();
    }

    /**
     * Adds pictures to a visit, as one step for undo. The event's folder keeps the bytes, named by their hash, with the
     * next save that finds them named; a picture that the visit has already is not added again.
     */
    public static Command command(EditingDomain domain, EventFolder folder, Visit visit, List<VisitPhoto> pictures)
            throws EventFolderException {
        CompoundCommand command = new CompoundCommand(TEXTS.text("visitPhoto.addPictures", "pictures", pictures.size()));
        List<String> present = new ArrayList<>(visit.getPhotos().stream().map(Photo::getFile).toList());
        for (VisitPhoto picture : pictures) {
            String kept = folder.addPhoto("photo" + picture.extension, picture.bytes);
            if (!present.contains(kept)) {
                present.add(kept);
                command.append(AddCommand.create(domain, visit, Literals.VISIT__PHOTOS, picture.photo(kept)));
            }
        }
        return command;
    }

    /** Does the name of a kept file end as those of pictures do? */
    public static boolean isPictureName(String file) {
        return file.toLowerCase(Locale.ROOT).matches("(?s).*\\.(jpe?g|png|webp|hei[cf])");
    }

    private Photo photo(String kept) {
        Photo photo = StraddleFactory.eINSTANCE.createPhoto();
        photo.setFile(kept);
        photo.setCaption(name);
        photo.setTakenAt(takenAt.orElse(null));
        position.ifPresent(place -> {
            photo.setLatitudeDeg(place.latitudeDeg());
            photo.setLongitudeDeg(place.longitudeDeg());
        });
        bearingDeg.ifPresent(photo::setBearingDeg);
        return photo;
    }

    /** Where a photo was taken as seen from a mark: "34 m from the mark, looking 210°"; empty when it does not say. */
    public static String where(Photo photo, GeoPosition mark) {
        List<String> parts = new ArrayList<>();
        if (photo.getLatitudeDeg() != null && photo.getLongitudeDeg() != null && mark != null
                && Math.abs(photo.getLatitudeDeg()) <= 90 && Math.abs(photo.getLongitudeDeg()) <= 180) {
            double metres = Geodesic.distanceM(mark, new GeoPosition(photo.getLatitudeDeg(), photo.getLongitudeDeg()));
            parts.add(metres < 10_000 ? TEXTS.text("visitPhoto.fromMark", "metres", Math.round(metres))
                    : TEXTS.text("visitPhoto.kmFromMark", "metres", Math.round(metres / 1000)));
        }
        if (photo.getBearingDeg() != null) {
            parts.add(TEXTS.text("visitPhoto.looking", "bearingDeg", Math.round(photo.getBearingDeg()) % 360));
        }
        return String.join(", ", parts);
    }
}
