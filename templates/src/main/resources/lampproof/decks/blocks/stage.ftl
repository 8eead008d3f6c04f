<#-- Inductor, switch and diode. The inductor hangs from a source node; the diode leads to a sink node. -->
<#macro stage source sink>
* Inductor, from ${source} to the switch node
Vinductor ${source} coil 0
<#if models.inductor??>
Xmain coil drain user_inductor<#if models.inductor.startCurrent> start_current=${start.inductorCurrent}</#if>
${models.inductor.text}
<#else>
<#if driver.inductor.saturationCurrent?is_infinite>
Lmain coil winding ${driver.inductor.inductance} ic=${start.inductorCurrent}
<#else>
* Its flux is that of a straight inductor; beyond ${driver.inductor.saturationCurrent} A the saturated core takes more current
Lmain coil linear ${driver.inductor.inductance} ic=${start.inductorCurrent}
Vlinear linear winding 0
Bsaturated coil winding I = ${circuit.excess}*(max(0, I(Vlinear) - ${driver.inductor.saturationCurrent}) + min(0, I(Vlinear) + ${driver.inductor.saturationCurrent}))
</#if>
Rwinding winding drain ${driver.inductor.resistance}
</#if>
* Diode, from the switch node to ${sink}
<#if models.diode??>
Xdiode drain carried user_diode
Vdiode carried ${sink} 0
${models.diode.text}
<#else>
Dmain drain cathode main_diode
Rdiode cathode carried ${driver.diode.resistance}
Vdiode carried ${sink} 0
<#if driver.diode.recoveryTime gt 0>
* Its recovery: the stored charge follows the diode current with the lifetime of the carriers, 1 V for each mA. Half of
* it flows back as current: the junction makes up for that as long as it conducts, and once it blocks the charge leaves
Fstore 0 stored Vdiode 1
Rstore stored 0 ${recovery.resistance}
Cstore stored 0 ${recovery.capacitance}
Grecovery cathode drain stored 0 ${recovery.conductance}
</#if>
.model main_diode d(is=${recovery.junctionCurrent} n=${driver.diode.emission})
</#if>
<#if models.switch??>
* Switch; its gate is driven to the gate voltage above its source, past the thresholds of the usual switch. The node
* capacitance is that of diode and winding
Vdrive drive sense ${driver.edges.gateVoltage}
Sdrive drive driven gate 0 gate_drive ON
Rdrive driven sense 100
.model gate_drive sw(vt=0.5 vh=0.1 ron=1 roff=1e9)
Vswitch drain switch 0
Xswitch switch driven sense user_switch
Cnode switch node ${circuit.nodeCapacitance} ic=0
Rnode node 0 ${circuit.nodeResistance}
Rsense sense 0 ${driver.senseResistance}
${models.switch.text}
<#else>
* Switch with body diode; the node capacitance is that of switch, diode and winding together, and its
* resistor keeps the discharge at turn-on slow enough to be followed
Vswitch drain switch 0
Smain switch sense gate 0 main_switch ON
Dbody sense switch body_diode
Cnode switch node ${circuit.nodeCapacitance} ic=0
Rnode node 0 ${circuit.nodeResistance}
Rsense sense 0 ${driver.senseResistance}
.model main_switch sw(vt=0.5 vh=0.1 ron=${[driver.powerSwitch.resistance, 0.001]?max} roff=1e9)
.model body_diode d(is=1e-12 n=1)
</#if>
</#macro>
