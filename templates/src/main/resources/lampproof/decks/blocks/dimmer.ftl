<#-- The mains behind a wall dimmer: a switch in series with a choke, a noise capacitor across both. A triac goes out when
     its current falls below the holding current, and stays out until it is fired again. -->
<#macro dimmer>
* Mains
Vmains mains neutral SIN(0 ${circuit.lineCrest} ${driver.line.frequency})
Rstray neutral 0 100e6
<#if setting.edge == "leading">
* Dimmer, leading edge: fired ${setting.closesAt} s into each half cycle; holds above ${driver.dimming.holdingCurrent} A
Vfire fire 0 PULSE(0 1 ${setting.closesAt} ${setting.pulseEdge} ${setting.pulseEdge} ${setting.gatePulse} ${setting.halfPeriod})
Bhold hold 0 V = (V(fire) > 0.5 || (V(closed) > 0.5 && abs(I(Vtriac)) > ${driver.dimming.holdingCurrent})) ? 1 : 0
Rhold hold closed 1e3
Chold closed 0 1e-9 ic=0
<#else>
* Dimmer, trailing edge: closes at the zero crossing, opens ${setting.closedFor} s later
Vclosed closed 0 PULSE(0 1 ${setting.closesAt} ${setting.pulseEdge} ${setting.pulseEdge} ${setting.closedFor} ${setting.halfPeriod})
</#if>
Vtriac mains fired 0
Striac fired coiled closed 0 dimmer_switch
Ldimmer coiled dimmed ${driver.dimming.inductance} ic=${start.chokeCurrent}
Rdimmer coiled dimmed ${setting.damping}
Cdimmer mains dimmed ${driver.dimming.capacitance} ic=${start.dimmerVoltage}
.model dimmer_switch sw(vt=0.5 vh=0.1 ron=0.1 roff=1e8)
* Terminals of the lamp
Vline line dimmed 0
</#macro>
