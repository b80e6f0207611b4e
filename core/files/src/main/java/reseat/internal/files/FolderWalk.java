package reseat.internal.files;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds device files by their first lines, without reading them completely. */
public final class FolderWalk {

    private static final int LOOKED_AT = 64 * 1024;

    private static final Pattern NAME = Pattern.compile(".+\\.(ya?ml|json)");
    private static final String DEVICE = "reseat-device";
    private static final Pattern FORMAT_LINE =
            Pattern.compile("(?m)^[\"']?format[\"']?[ \\t]*:[ \\t]*[\"']?([^\\s\"'/#]*)");
    private static final Pattern JOINTS_LINE =
            Pattern.compile("(?m)^[\"']?joints[\"']?[ \\t]*:(?:\\s|$)");
    private static final Pattern FORMAT_MEMBER =
            Pattern.compile("[\"']?format[\"']?\\s*:\\s*[\"']?([^\\s\"'/,}]*)");

    private FolderWalk() {}

    /** Finds device files; see {@code DeviceFolder.files}. */
    public static List<Path> devices(Path folder) throws IOException {
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(
                folder,
                new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult preVisitDirectory(
                            Path each, BasicFileAttributes attributes) {
                        return !each.equals(folder) && (hidden(each) || isProject(each))
                                ? FileVisitResult.SKIP_SUBTREE
                                : FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFile(Path each, BasicFileAttributes attributes)
                            throws IOException {
                        String name = String.valueOf(each.getFileName()).toLowerCase(Locale.ROOT);
                        if (!hidden(each)
                                && NAME.matcher(name).matches()
                                && Files.isRegularFile(each)
                                && saysDevice(head(each))) {
                            found.add(each);
                        }
                        return FileVisitResult.CONTINUE;
                    }
                });
        // by name, folder by folder, independent of the file separator
        found.sort(Comparator.comparing(path -> path.toString().replace('\\', '/')));
        return found;
    }

    /** Device files of a software project are its test data, which its own build checks. */
    private static boolean isProject(Path folder) {
        return Files.exists(folder.resolve("pom.xml"));
    }

    private static boolean hidden(Path path) {
        return String.valueOf(path.getFileName()).startsWith(".");
    }

    private static String head(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            // the words searched for are ASCII; other bytes do not matter
            return new String(in.readNBytes(LOOKED_AT), ISO_8859_1);
        }
    }

    static boolean saysDevice(String text) {
        String body = text.startsWith("\u00ef\u00bb\u00bf") ? text.substring(3) : text;
        if (body.stripLeading().startsWith("{")) {
            Matcher member = FORMAT_MEMBER.matcher(body);
            return member.find() && DEVICE.equals(member.group(1));
        }
        Matcher line = FORMAT_LINE.matcher(body);
        return line.find() ? DEVICE.equals(line.group(1)) : JOINTS_LINE.matcher(body).find();
    }
}
