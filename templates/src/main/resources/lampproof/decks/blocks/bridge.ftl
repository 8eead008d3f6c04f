<#-- Four diodes; their resistance stands once behind them, for the two that conduct. Without their capacitance the neutral would float while all four block, and the simulator's step could vanish at the zero crossing. -->
<#macro bridge>
* Bridge
Dhigh1 filtered rectified bridge_diode
Dhigh2 neutral rectified bridge_diode
Dlow1 0 filtered bridge_diode
Dlow2 0 neutral bridge_diode
Rbridge rectified bridge ${circuit.bridgeResistance}
Vbridge bridge bus 0
.model bridge_diode d(is=${driver.bridge.saturationCurrent} n=${driver.bridge.emission} cjo=10e-12)
</#macro>
