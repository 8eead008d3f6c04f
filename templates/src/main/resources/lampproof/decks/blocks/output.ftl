<#-- Output capacitor and string, from a positive to a negative node. -->
<#macro output positive negative fault="">
* Output capacitor and string of LEDs<#if !models.string??>: knee and dynamic resistance</#if>
<#if driver.output.halfVoltage?is_infinite>
Cout ${positive} ${negative} ${driver.output.capacitance} ic=${start.outputVoltage}
<#else>
* Class-2 ceramic: what a capacitor without bias loss would take, divided; half of its capacitance is left at ${driver.output.halfVoltage} V
Eunbiased unbiased 0 ${positive} ${negative} 1
Vunbiased unbiased taken 0
Cunbiased taken 0 ${driver.output.nominal} ic=${start.outputVoltage}
Bout ${positive} ${negative} I = I(Vunbiased)/(1 + V(unbiased)*V(unbiased)/${driver.output.halfVoltage}/${driver.output.halfVoltage})
</#if>
<#if fault == "open">
* The string opens: the switch in series opens
Sfault ${positive} joint fault 0 fault
Vfault fault 0 PULSE(1 0 ${event.instant} ${event.edge} ${event.edge} 1)
.model fault sw(vt=0.5 vh=0.1 ron=1e-3 roff=1e9)
Vstring joint anode 0
<#elseif fault == "shorted">
* The string is shorted: the switch across it closes
Sfault anode ${negative} fault 0 fault
Vfault fault 0 PULSE(0 1 ${event.instant} ${event.edge} ${event.edge} 1)
.model fault sw(vt=0.5 vh=0.1 ron=${event.shortResistance} roff=1e9)
Vstring ${positive} anode 0
<#else>
Vstring ${positive} anode 0
</#if>
<#if models.string??>
Xstring anode ${negative} user_string
${models.string.text}
<#else>
Rstring anode knee ${driver.string.resistance}
Vknee knee forward ${driver.string.knee}
Dstring forward ${negative} one_way
.model one_way d(is=1e-9 n=0.02)
</#if>
</#macro>

<#-- With the line held at its crest the output would charge on: this takes what the capacitor would store. -->
<#macro balance positive negative>
* What the output capacitor would store at the crest
Ibalance ${positive} ${negative} ${start.balanceCurrent}
</#macro>
