package lampproof.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The picture of packages and arrows in the contributor's guide: a line for each module, and below it, set in, a line
 * for each package with the packages that it uses. A line that ends with a comma goes on in the next one.
 */
final class PackagePicture {

    private static final Pattern BLOCK =
            Pattern.compile("<!-- PackagesTest reads this picture\\. -->\\R```\\R(.*?)\\R```", Pattern.DOTALL);

    private final List<String> places = new ArrayList<>();
    private final List<String> packages = new ArrayList<>();
    private final List<String> arrows = new ArrayList<>();

    private PackagePicture(String picture) {
        String module = "";
        for (String line : picture.replaceAll(",\\R *", ", ").lines().toList()) {
            String[] words = line.strip().split("[ ,]+(-> *)?", -1);
            if (line.startsWith(" ")) {
                add(module, words[0], List.of(words).subList(1, words.length));
            } else {
                module = words[0];
            }
        }
    }

    /** The picture in a guide. */
    static PackagePicture read(Path guide) {
        try {
            return of(Files.readString(guide));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The picture in the text of a guide. */
    static PackagePicture of(String guide) {
        Matcher block = BLOCK.matcher(guide);
        if (!block.find()) {
            throw new IllegalStateException("the guide has no block that matches " + BLOCK);
        }
        return new PackagePicture(block.group(1));
    }

    /** Every package with its module, such as {@code shared/lampproof.spec}. */
    List<String> places() {
        return places;
    }

    /** Every arrow, such as {@code spec -> fault}. */
    List<String> arrows() {
        return arrows;
    }

    /** Whether an arrow points to a package that is drawn above the one that it comes from. */
    boolean pointsUp(String arrow) {
        List<String> ends = List.of(arrow.split(" -> ", -1));
        int to = packages.indexOf(ends.get(1));
        return to >= 0 && to < packages.indexOf(ends.get(0));
    }

    private void add(String module, String name, List<String> used) {
        packages.add(name);
        places.add(module + "/lampproof." + name);
        used.forEach(other -> arrows.add(name + " -> " + other));
    }
}
