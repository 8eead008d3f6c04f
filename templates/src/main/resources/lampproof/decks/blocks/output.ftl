<#-- Output capacitor and string, from a positive to a negative node. -->
<#macro output positive negative>
* Output capacitor and string of LEDs: knee and dynamic resistance
Cout ${positive} ${negative} ${driver.output.capacitance} ic=${start.outputVoltage}
Vstring ${positive} anode 0
Rstring anode knee ${driver.string.resistance}
Vknee knee forward ${driver.string.knee}
Dstring forward ${negative} one_way
.model one_way d(is=1e-9 n=0.02)
</#macro>

<#-- With the line held at its crest the output would charge on: this takes what the capacitor would store. -->
<#macro balance positive negative>
* What the output capacitor would store at the crest
Ibalance ${positive} ${negative} ${start.balanceCurrent}
</#macro>
