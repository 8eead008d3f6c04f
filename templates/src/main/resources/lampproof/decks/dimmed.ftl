<#-- Behind a phase-cut dimmer: leading or trailing edge, any angle, off included. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading shows="Three half line cycles behind the dimmer, from the predicted steady state; the last two are measured."/>
<@block.dimmer/>
<@block.filter/>
<@block.bleeder/>
<@block.bridge/>
<@block.bus/>
<@block.bias/>
<@stage.converter supplied=true more=[
  {"column": "dimmer_current", "vector": "i(Vtriac)"},
  {"column": "bleeder_voltage", "vector": "abs(v(filtered) - v(neutral))"},
  {"column": "bleeder_current", "vector": "i(Vbleeder)"},
  {"column": "bias_current", "vector": "i(Vbias)"}
] saved="i(Vtriac) i(Vbleeder) i(Vbias)"/>
.end
