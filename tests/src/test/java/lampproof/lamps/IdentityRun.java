package lampproof.lamps;

import java.util.List;
import java.util.stream.LongStream;

/** Checks the identities on many specs: arguments are how many to try and the first seed. Exit 1 tells of a violation. */
final class IdentityRun {

    private IdentityRun() {}

    public static void main(String[] arguments) {
        long first = Long.parseLong(arguments[1]);
        List<Identities> all = LongStream.range(first, first + Long.parseLong(arguments[0]))
                .parallel()
                .mapToObj(seed -> Identities.of(SpecGenerator.of(seed)))
                .toList();
        List<Identities> broken =
                all.stream().filter(one -> !one.violations().isEmpty()).toList();
        broken.forEach(
                one -> System.out.println("seed " + one.lamp().seed() + ": " + String.join("; ", one.violations())));
        long accepted = all.stream().filter(Identities::accepted).count();
        System.out.println(all.size() + " specs, " + accepted + " accepted, " + broken.size() + " violate an identity");
        System.exit(broken.isEmpty() ? 0 : 1);
    }
}
