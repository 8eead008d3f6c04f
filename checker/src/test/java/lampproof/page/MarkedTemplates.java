package lampproof.page;

import freemarker.cache.StringTemplateLoader;
import freemarker.template.Configuration;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.template.RecordWrapper;

/** The page templates with a mark in each branch, loop and macro, which shows in the page once it was taken. */
final class MarkedTemplates {

    private static final Pattern BRANCH = Pattern.compile("<#(?:if|elseif|else|list|macro)\\b[^>]*>");
    private static final Pattern MARK = Pattern.compile("@@[^@]+@@");
    private static final Pattern COMPARED = Pattern.compile("[!=]= \"([^\"]*)\"");

    private final Map<String, String> texts = new TreeMap<>();
    private final Set<String> marks = new LinkedHashSet<>();
    private final Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);

    MarkedTemplates() throws IOException {
        read();
        StringTemplateLoader loader = new StringTemplateLoader();
        texts.forEach((name, text) -> loader.putTemplate(name, marked(name, text)));
        configuration.setTemplateLoader(loader);
        configuration.setObjectWrapper(new RecordWrapper());
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setLocalizedLookup(false);
    }

    /** Every mark, each with its template and place. */
    Set<String> marks() {
        return Set.copyOf(marks);
    }

    /** Every word that a template compares something with. */
    List<String> comparedWords() {
        return texts.values().stream()
                .flatMap(text -> COMPARED.matcher(text).results())
                .map(found -> found.group(1))
                .distinct()
                .toList();
    }

    /** The marks of the branches that a template takes with a view. */
    Set<String> taken(String template, Record view) throws Exception {
        StringWriter page = new StringWriter();
        configuration.getTemplate(template).process(view, page);
        Set<String> taken = new LinkedHashSet<>();
        MARK.matcher(page.toString()).results().forEach(mark -> taken.add(mark.group()));
        return taken;
    }

    private String marked(String name, String text) {
        Matcher branch = BRANCH.matcher(text);
        return branch.replaceAll(found -> {
            String mark = "@@" + name + place(text, found.start()) + "@@";
            marks.add(mark);
            return Matcher.quoteReplacement(found.group() + mark);
        });
    }

    private static String place(String text, int at) {
        long line = text.chars().limit(at).filter(one -> one == '\n').count() + 1;
        return ":" + line + ", column " + (at - text.lastIndexOf('\n', at));
    }

    /** Reads the sources: a folder of classes may contain files whose sources were deleted. */
    private void read() throws IOException {
        Path folder = folder();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
    }

    private static Path folder() {
        Path top = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(top.resolve("templates"))) {
            top = top.getParent();
        }
        return top.resolve("templates/src/main/resources/lampproof/report");
    }
}
