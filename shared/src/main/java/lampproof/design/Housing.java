package lampproof.design;

import java.util.List;

/**
 * A sealed housing and the parts that heat it.
 *
 * @param ambient air around the lamp [degC]
 * @param coldest air in which the lamp must start [degC]
 * @param resistance from the inside of the housing to the air around [K/W]
 * @param parts the parts that have a temperature of their own
 */
public record Housing(double ambient, double coldest, double resistance, List<Part> parts) {

    /** Copies the parts. */
    public Housing {
        parts = List.copyOf(parts);
    }

    /** The part of a name; it must be there. */
    public Part part(String name) {
        return parts.stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /**
     * A part in the housing.
     *
     * @param name group of the part in a spec
     * @param kind what it is, in words
     * @param resistance from the part to the inside of the housing [K/W]
     * @param rating highest temperature that it is rated for [degC]
     */
    public record Part(String name, String kind, double resistance, double rating) {}
}
