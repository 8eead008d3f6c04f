<#-- Inductor, switch and diode. The inductor hangs from a source node; the diode leads to a sink node. -->
<#macro stage source sink>
* Inductor, from ${source} to the switch node
Vinductor ${source} coil 0
Lmain coil winding ${driver.inductor.inductance} ic=${start.inductorCurrent}
Rwinding winding drain ${driver.inductor.resistance}
* Diode, from the switch node to ${sink}
Dmain drain cathode main_diode
Rdiode cathode carried ${driver.diode.resistance}
Vdiode carried ${sink} 0
.model main_diode d(is=${driver.diode.saturationCurrent} n=${driver.diode.emission})
* Switch with body diode; the node capacitance is that of switch, diode and winding together, and its
* resistor keeps the discharge at turn-on slow enough to be followed
Vswitch drain switch 0
Smain switch sense gate 0 main_switch ON
Dbody sense switch body_diode
Cnode switch node ${driver.powerSwitch.capacitance} ic=0
Rnode node 0 ${circuit.nodeResistance}
Rsense sense 0 ${driver.senseResistance}
.model main_switch sw(vt=0.5 vh=0.1 ron=${driver.powerSwitch.resistance} roff=1e9)
.model body_diode d(is=1e-12 n=1)
</#macro>
