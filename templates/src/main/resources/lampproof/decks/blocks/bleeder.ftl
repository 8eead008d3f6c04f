<#-- A resistor while the rectified line is low, and a sink that tops up what the lamp draws. Signals of this block are
     1 V for 1 A. The threshold senses the line, not the node after the diodes, which would hold the crest. -->
<#macro bleeder>
<#if !driver.dimming.bleederResistance?is_infinite || driver.dimming.topUpCurrent gt 0>
* Bleeder, behind two diodes of its own: ${driver.dimming.bleederResistance} Ohm below ${driver.dimming.threshold} V, and a sink that adds current
Dbleeder1 filtered tapped bridge_diode
Dbleeder2 neutral tapped bridge_diode
Vbleeder tapped bled 0
Bdrawn drawn 0 V = I(Vbridge)
Rdrawn drawn sensed ${setting.senseResistance}
Csensed sensed 0 ${setting.senseCapacitance} ic=${start.sensedCurrent}
Bpull pull 0 V = abs(V(filtered) - V(neutral)) < ${driver.dimming.threshold} ? V(bled)/${driver.dimming.bleederResistance} : 0
Bbleeder bled 0 I = V(pull) + max(0, ${driver.dimming.topUpCurrent}*min(1, V(bled)/${setting.fullFrom}) - V(sensed) - V(pull))
<#else>
* No bleeder
Vbleeder filtered unloaded 0
Rbleeder unloaded 0 1e9
</#if>
</#macro>
