<#-- Gear integration: the trapezoidal rule rings on the hard edges and can end with nonsense. -->
<#macro run>
* Run
.options method=gear abstol=1e-7 vntol=1e-4 itl4=50
.tran ${deck.step} ${deck.stop} 0 ${deck.step} uic
</#macro>
