package lampproof.cli;

import java.io.Console;

/** Whether there is a terminal to draw on. */
final class Terminal {

    private Terminal() {}

    /** Until Java 21 there is a console on a terminal only; from Java 22 on always, and it knows where it is. */
    @SuppressWarnings("SystemConsoleNull")
    static boolean isPresent() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException before22) {
            return true;
        }
    }
}
