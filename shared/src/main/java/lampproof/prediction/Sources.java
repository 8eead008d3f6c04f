package lampproof.prediction;

/** Where formulas come from that more than one figure rests on. */
final class Sources {

    static final String MODEL = "quasi-static model of this project; one switching cycle per line angle, after "
            + "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, ch. 21";
    static final String MARCH = "march of the whole circuit in time by this project, semi-implicit Euler rule";
    static final String RMS = "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, app. A";
    static final String LINE =
            "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 20.3";
    static final String FLICKER = "IEEE Std 1789-2015, clause 8.1.1";
    static final String OHM = "resistance times square of the rms current";
    static final String ENERGY = "balance of energy";
    static final String JUNCTION = "junction law of the deck's diode";
    static final String RECOVERY = "P. O. Lauritzen, C. L. Ma, IEEE Trans. Power Electronics 6(2), 1991 (from memory), "
            + "straight ramps of current";
    static final String STEINMETZ = "improved generalised Steinmetz equation; K. Venkatachalam, C. R. Sullivan, "
            + "T. Abdallah, H. Tacca, IEEE COMPEL 2002";
    static final String DOWELL = "P. L. Dowell, Proc. IEE 113(8), 1966, at the frequency of equal rms slope after "
            + "W. G. Hurley, E. Gath, J. G. Breslin, IEEE Trans. Power Electronics 15(2), 2000 (from memory)";
    static final String HEAT = "heat balance of a star of thermal resistances; J. M. Jacob, Power Electronics: "
            + "Principles and Applications, ex. 6.7";

    private Sources() {}
}
