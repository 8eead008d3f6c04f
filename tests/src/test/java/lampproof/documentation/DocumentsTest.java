package lampproof.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.architecture.SourceTree;
import lampproof.design.DefaultRules;
import lampproof.endtoend.Lampproof;
import lampproof.lint.rule.Rule;
import lampproof.lint.rule.Rules;
import lampproof.spec.Entry;
import lampproof.spec.Vocabulary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/**
 * The documents show commands that work, output that the program prints, and tables that the code confirms.
 *
 * <p>With {@code -Ddocuments=write} the samples and the rows of the spec are written anew before they are compared.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class DocumentsTest {

    private static final int DOCUMENTS = 12;
    private static final int BLOCKS_RUN = 7;
    private static final int BLOCKS_SKIPPED = 5;
    private static final int SAMPLES = 2;

    private static final String PROVE = "./lampproof prove lamp.csv -o run";

    /** A class name in code letters: a capital, and a second one later, or one of those that have only one. */
    private static final Pattern CLASS =
            Pattern.compile("`((?:[A-Z][a-z]+(?:[A-Z][a-z0-9]*)+|Vocabulary|Measurement|Plot))(?:\\.\\w+)?`");

    @TempDir
    private static Path folder;

    private static CommandRuns runs;

    @BeforeAll
    static void prepareFolder() throws IOException {
        runs = new CommandRuns(folder);
        if ("write".equals(System.getProperty("documents"))) {
            writeRows();
        }
    }

    private static Stream<Block> blocks() {
        return Document.all().stream().flatMap(document -> Block.in(document).stream());
    }

    @Test
    void readmeAndGuideAreShort() {
        assertThat(Document.all()).hasSize(DOCUMENTS);
        assertThat(Document.named("README.md").words()).isBetween(600L, 1300L);
        assertThat(Document.named("DEVELOPERS.md").words()).isBetween(600L, 1800L);
    }

    @Test
    void everyLinkLeadsToAFileAndAHeading() {
        List<String> broken = Document.all().stream()
                .flatMap(document -> document.links().stream()
                        .filter(link -> !document.leads(link))
                        .map(link -> document.name() + ": " + link))
                .toList();
        assertThat(broken).as("links that lead nowhere").isEmpty();
        assertThat(Document.all()).allMatch(document -> document.links().size() > 0 || isDecisions(document));
    }

    @Test
    void everyClassNamedExists() throws IOException {
        Set<String> known;
        try (Stream<Path> files = Files.walk(SourceTree.top())) {
            known = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java"))
                    .map(name -> name.replace(".java", ""))
                    .collect(Collectors.toSet());
        }
        Set<String> named = Document.all().stream()
                .flatMap(document -> document.lines().stream())
                .flatMap(line -> CLASS.matcher(line).results())
                .map(match -> match.group(1))
                .collect(Collectors.toSet());
        assertThat(named).contains("Vocabulary", "DeckKind").isSubsetOf(known);
    }

    private static boolean isDecisions(Document document) {
        return document.name().endsWith("decisions.md");
    }

    @Test
    void everyDecisionHasANumberAndAllParts() {
        for (Document document :
                Document.all().stream().filter(DocumentsTest::isDecisions).toList()) {
            List<String> headings = document.lines().stream()
                    .filter(line -> line.startsWith("## "))
                    .toList();
            String letter = headings.get(0).substring(3, 4);
            for (int number = 1; number <= headings.size(); number++) {
                assertThat(headings.get(number - 1)).matches("## " + letter + number + " \\p{Lu}.{15,}[^.?]");
            }
            assertThat(document.lines().stream().filter(line -> line.startsWith("- Choice: ")))
                    .hasSameSizeAs(headings);
            assertThat(document.lines().stream().filter(line -> line.startsWith("- Why: ")))
                    .hasSameSizeAs(headings);
        }
    }

    @Test
    @Order(1)
    void everyCommandRunsOrItsBlockStatesWhyNot() throws Exception {
        Lampproof.simulatorOrSkip();
        List<Block> shown = blocks().filter(Block::hasCommands).toList();
        for (Block block : shown) {
            for (String line : block.isSkipped() ? List.<String>of() : block.lines()) {
                assertThat(line)
                        .as("%s: a command of lampproof, or a note that it is not run", block)
                        .matches(CommandRuns::isCommand);
                Lampproof end = runs.of(line);
                assertThat(end.exitCode()).as("%s: %s%n%s", block, line, end).isEqualTo(block.exitCode());
            }
        }
        assertThat(shown.stream().filter(Block::isSkipped)).hasSize(BLOCKS_SKIPPED);
        assertThat(shown.stream().filter(block -> !block.isSkipped())).hasSize(BLOCKS_RUN);
    }

    @Test
    @Order(2)
    void everySampleIsWhatTheProgramPrints() throws Exception {
        Lampproof.simulatorOrSkip();
        assertThat(samples()).hasSize(SAMPLES);
        for (int index = 0; index < SAMPLES; index++) {
            compare(samples().get(index));
        }
    }

    /** Read again each time: a sample before may have been written anew. */
    private static List<Block> samples() {
        return blocks().filter(block -> block.sample().isPresent()).toList();
    }

    private static void compare(Block block) throws IOException, InterruptedException {
        Block.Sample sample = block.sample().orElseThrow();
        List<String> printed = sample.of(runs.of(sample.command())
                .out()
                .lines()
                .map(String::stripTrailing)
                .toList());
        boolean same = CommandRuns.simulates(sample.command())
                ? OutputComparison.same(block.lines(), printed)
                : block.lines().equals(printed);
        if (!same && "write".equals(System.getProperty("documents"))) {
            block.with(printed).write();
        } else {
            assertThat(same)
                    .as("%s is the output of %s; tests/documents writes it anew%n%s", block, sample, printed)
                    .isTrue();
        }
    }

    @Test
    @Order(3)
    void theTableOfARunFolderNamesTheFilesOfARun() throws Exception {
        Lampproof.simulatorOrSkip();
        assertThat(runs.of(PROVE).exitCode()).isZero();
        List<String> stated = DocumentTable.named(Document.named("generator/README.md"), "run folder").names().stream()
                .flatMap(name -> Stream.of("crest", "mains").map(deck -> name.replace("NAME", deck)))
                .distinct()
                .toList();
        try (Stream<Path> files = Files.list(folder.resolve("run"))) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(stated);
        }
        assertThat(stated)
                .containsAll(DocumentTable.named(Document.named("README.md"), "run folder").names().stream()
                        .map(name -> name.replace("NAME", "mains"))
                        .toList());
    }

    @Test
    void theTableOfCommandsIsThatOfTheHelp() throws Exception {
        assertThat(DocumentTable.named(Document.named("README.md"), "commands").names().stream()
                        .map(name -> name.split(" ", 2)[0])
                        .distinct())
                .containsExactlyInAnyOrderElementsOf(
                        help("Commands:", "  ([a-z]+) .*").keySet());
    }

    @Test
    void theTableOfExitCodesIsThatOfTheHelp() throws Exception {
        Map<String, String> stated = DocumentTable.named(Document.named("README.md"), "exit codes").rows().stream()
                .collect(Collectors.toMap(row -> row.get(0), row -> row.get(1)));
        assertThat(stated).isEqualTo(help("Exit codes:", "  (\\d) +(.*)"));
    }

    /** The lines of a section of the help by their first word; the second group of the pattern is the value. */
    private static Map<String, String> help(String section, String form) throws IOException, InterruptedException {
        Pattern line = Pattern.compile(form);
        return runs.of("./lampproof --help")
                .out()
                .lines()
                .dropWhile(text -> !text.equals(section))
                .skip(1)
                .takeWhile(text -> !text.isBlank())
                .map(line::matcher)
                .filter(match -> match.matches())
                .collect(Collectors.toMap(
                        match -> match.group(1),
                        match -> match.groupCount() > 1 ? match.group(2) : "",
                        (one, other) -> one,
                        LinkedHashMap::new));
    }

    @Test
    void theTableOfLinterRulesIsThatOfTheLinter() {
        assertThat(DocumentTable.named(Document.named("generator/README.md"), "linter rules")
                        .names())
                .containsExactlyElementsOf(Rules.ALL.stream().map(Rule::name).toList());
    }

    @Test
    void theTablesOfSpecRowsAreTheVocabulary() {
        for (String group : Vocabulary.groups()) {
            assertThat(rowsOf(group).rows()).containsExactlyElementsOf(cells(group));
        }
    }

    private static void writeRows() {
        for (String group : Vocabulary.groups()) {
            rowsOf(group).with(cells(group)).write();
        }
    }

    private static DocumentTable rowsOf(String group) {
        return DocumentTable.named(Document.named("shared/README.md"), "rows of " + group);
    }

    private static List<List<String>> cells(String group) {
        return Vocabulary.entries().stream()
                .filter(entry -> entry.name().startsWith(group + "."))
                .map(DocumentsTest::cells)
                .toList();
    }

    /** Name, range, meaning and default of a row. */
    private static List<String> cells(Entry entry) {
        List<String> rules = DefaultRules.of(entry);
        return List.of(
                "`" + entry.name() + "`",
                entry.allowed(),
                entry.meaning(),
                rules.isEmpty() ? "required" : String.join("; ", rules));
    }
}
