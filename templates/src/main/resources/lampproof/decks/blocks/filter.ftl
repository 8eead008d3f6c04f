<#-- Fusible resistor, damped choke and capacitor between the mains and the bridge. -->
<#macro filter>
* Filter: fuse with line resistance, choke with its winding, damping across both, capacitor
Rfuse line fused ${circuit.fuseResistance}
Lfilter fused choke ${driver.filter.inductance} ic=${start.filterCurrent}
Rchoke choke filtered ${driver.filter.resistance}
Rdamping fused filtered ${driver.filter.damping}
Cfilter filtered neutral ${driver.filter.capacitance} ic=${start.filterVoltage}
</#macro>
