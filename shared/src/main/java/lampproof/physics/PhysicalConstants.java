package lampproof.physics;

/** Constants of nature, each with unit, source and year. */
public final class PhysicalConstants {

    /** Charge of the electron [C]; exact by definition, SI Brochure, 9th ed., 2019. */
    public static final double ELEMENTARY_CHARGE = 1.602176634e-19;

    /** Boltzmann constant [J/K]; exact by definition, SI Brochure, 9th ed., 2019. */
    public static final double BOLTZMANN = 1.380649e-23;

    /** Boltzmann constant [eV/K]; the ratio of the two constants above. */
    public static final double BOLTZMANN_ELECTRONVOLT = BOLTZMANN / ELEMENTARY_CHARGE;

    /** Permeability of free space [H/m]; the classical 4 pi 1e-7, within 2e-10 of CODATA 2022. */
    public static final double VACUUM_PERMEABILITY = 4e-7 * Math.PI;

    /** Zero of the Celsius scale [K]; exact by definition, SI Brochure, 9th ed., 2019. */
    public static final double ZERO_CELSIUS = 273.15;

    private PhysicalConstants() {}
}
