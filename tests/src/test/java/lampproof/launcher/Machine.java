package lampproof.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampproof.architecture.SourceTree;

/**
 * A machine that has a checkout with a fresh jar, and on its PATH only the programs that a test gives it.
 *
 * <p>Java, Maven and the package manager are stand-ins: Java prints its arguments, the others note theirs.
 */
final class Machine {

    private static final List<String> REAL_PROGRAMS =
            List.of("cat", "find", "flock", "mkdir", "mv", "readlink", "rm", "sed", "sh", "sleep", "touch");

    private final Path folder;

    private Machine(Path folder) {
        this.folder = folder;
    }

    /** A machine of an ordinary user, with Java 17, Maven and the simulator, in folders with blanks in their names. */
    static Machine in(Path parent) throws IOException {
        Machine machine = new Machine(parent.resolve("a machine"));
        for (String name : REAL_PROGRAMS) {
            machine.passOn(name);
        }
        machine.checkOut();
        machine.installJava("17.0.1");
        machine.program("mvn", "note \"$@\"; echo jar >checker/target/lampproof.jar");
        machine.program("ngspice", "");
        for (String name : List.of("shellcheck", "chromium", "chromedriver")) {
            machine.program(name, "");
        }
        machine.program("id", "echo 1000");
        machine.program("apt-get", "note \"$@\"");
        machine.program("apt-cache", "[ \"$2\" = openjdk-17-jdk-headless ]");
        return machine;
    }

    /** Puts a Java of this version on the PATH and answers its home. */
    Path installJava(String version) throws IOException {
        Path home = folder.resolve("java " + version);
        write(home.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
        script(home.resolve("bin/java"), "printf '%s\\n' \"$@\"; exit ${JAVA_EXIT:-0}");
        script(home.resolve("bin/javac"), "");
        for (String name : List.of("java", "javac")) {
            lack(name);
            Files.createSymbolicLink(bin(name), home.resolve("bin").resolve(name));
        }
        return home;
    }

    /** Puts a program on the PATH that does what these shell commands say; {@code note} keeps its words. */
    void program(String name, String commands) throws IOException {
        String note = "note() { echo \"" + name + " $*\" >>'" + folder.resolve("notes") + "'; }\n";
        script(bin(name), note + commands);
    }

    /** Takes programs from the PATH. */
    void lack(String... names) throws IOException {
        for (String name : names) {
            Files.deleteIfExists(bin(name));
        }
    }

    /** What the programs noted, a line each. */
    List<String> notes() throws IOException {
        Path notes = folder.resolve("notes");
        return Files.exists(notes) ? Files.readAllLines(notes) : List.of();
    }

    /** A file of the checkout. */
    Path file(String path) {
        return folder.resolve("lamp proof").resolve(path);
    }

    /** A program on the PATH. */
    Path bin(String name) {
        return folder.resolve("bin").resolve(name);
    }

    /** Runs the launcher. */
    Ending run(String... arguments) {
        return run(Map.of(), arguments);
    }

    /** Runs the launcher with these variables set. */
    Ending run(Map<String, String> variables, String... arguments) {
        return Ending.of(command(variables, file("lampproof"), arguments));
    }

    /** A program, ready to start from another folder, with no other variables than PATH and these. */
    ProcessBuilder command(Map<String, String> variables, Path program, String... arguments) {
        List<String> words = new ArrayList<>(List.of(program.toString()));
        words.addAll(List.of(arguments));
        ProcessBuilder command = new ProcessBuilder(words).directory(folder.toFile());
        command.environment().clear();
        command.environment().putAll(variables);
        command.environment().put("PATH", folder.resolve("bin").toString());
        return command;
    }

    private void checkOut() throws IOException {
        Instant anHourAgo = Instant.now().minus(Duration.ofHours(1));
        write(file("lampproof"), Files.readString(SourceTree.top().resolve("lampproof")));
        Files.setPosixFilePermissions(file("lampproof"), PosixFilePermissions.fromString("rwxr-xr-x"));
        for (String source : List.of("pom.xml", "shared/pom.xml", "shared/src/main/Lamp.java")) {
            write(file(source), "");
        }
        try (Stream<Path> sources = Files.walk(file(""))) {
            for (Path source : sources.toList()) {
                Files.setLastModifiedTime(source, FileTime.from(anHourAgo));
            }
        }
        write(file("checker/target/lampproof.jar"), "jar");
        Files.setLastModifiedTime(file("checker/target/lampproof.jar"), FileTime.from(anHourAgo.plusSeconds(60)));
    }

    /** Hands on to the real program; a link out of a temporary folder would make JUnit warn. */
    private void passOn(String name) throws IOException {
        for (String place : List.of("/bin/", "/usr/bin/")) {
            if (Files.isExecutable(Path.of(place + name))) {
                script(bin(name), "exec " + place + name + " \"$@\"");
            }
        }
    }

    private static void script(Path file, String commands) throws IOException {
        write(file, "#!/bin/sh\n" + commands + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
