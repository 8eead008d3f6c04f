<#-- A whole line cycle, switched. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading/>
<@block.mains/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter/>
.end
