<#-- Controller and gate drive, fed from the bus by a linear supply; they starve below a few volts. -->
<#macro bias>
* Bias: linear supply of controller and gate drive
Vbias bus supply 0
Bbias supply 0 I = ${setting.bias}*max(0, min(1, V(supply)/${setting.fullFrom}))
</#macro>
