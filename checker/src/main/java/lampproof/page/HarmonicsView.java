package lampproof.page;

import java.util.List;
import java.util.OptionalDouble;
import lampproof.page.Axis.Tick;

/**
 * The spectrum of the line current as its template draws it.
 *
 * @param orders the orders drawn
 * @param bar width of a bar in the picture
 * @param ticks of the vertical axis
 * @param limited whether an order has a limit
 * @param rules the rules that set the limits
 * @param words whether the limits are kept, in sentences
 */
record HarmonicsView(
        List<Order> orders, double bar, List<Tick> ticks, boolean limited, String rules, List<String> words) {

    /**
     * The bars of an order.
     *
     * @param order the order
     * @param left start of its predicted bar
     * @param middle its end, and the start of the simulated bar
     * @param right end of the simulated bar
     * @param predicted top of the predicted bar
     * @param simulated top of the simulated bar
     * @param limit place of its limit
     */
    record Order(
            int order,
            double left,
            double middle,
            double right,
            double predicted,
            double simulated,
            OptionalDouble limit) {}
}
