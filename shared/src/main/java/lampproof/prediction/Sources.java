package lampproof.prediction;

/** Where formulas come from that more than one figure rests on. */
final class Sources {

    static final String MODEL = "quasi-static model of this project; one switching cycle per line angle, after "
            + "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, ch. 21";
    static final String MARCH = "time integration of the whole circuit by this project, semi-implicit Euler rule";
    static final String RMS = "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, app. A";
    static final String LINE =
            "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 20.3";
    static final String OHM = "resistance times square of the rms current";
    static final String ENERGY = "balance of energy";
    static final String JUNCTION = "junction law of the deck's diode";
    static final String HEAT = "heat balance of a star of thermal resistances; J. M. Jacob, Power Electronics: "
            + "Principles and Applications, ex. 6.7";
    static final String SWITCHED = "Infineon DN 2013-01 rev. 1.1, 2016";
    static final String WARM_STRING = "straight line over temperature, common practice, no source";
    static final String ARRHENIUS = "Arrhenius law through two given points, common practice, no source";

    private Sources() {}
}
