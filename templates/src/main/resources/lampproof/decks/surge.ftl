<#-- A surge strikes a running lamp between line and neutral. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading/>
<@block.mains from=event.lineDegrees line="mains"/>
<@block.surge/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter protected=true lineProbe="Vport"/>
.end
