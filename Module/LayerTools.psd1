@{
    RootModule = 'LayerTools.psm1'
    ModuleVersion = '0.1.0'
    GUID = '4b1f0a52-7c0e-4d5e-9f6c-2a8d3f1b7e60'
    Author = 'LayerTools contributors'
    CompanyName = 'LayerTools contributors'
    Copyright = 'Copyright (c) LayerTools contributors. MIT licence.'
    Description = 'Batch work on layered art files (PSD, PSB): read trees, rename in bulk, mirror left parts to the right, sum up what is finished, write contact sheets and pictures of parts, and save without ever damaging an original.'
    PowerShellVersion = '5.1'
    CompatiblePSEditions = @('Desktop', 'Core')
    DotNetFrameworkVersion = '4.7.2'
    FormatsToProcess = @('LayerTools.Format.ps1xml')
    CmdletsToExport = @(
        'Compare-LayerFile'
        'ConvertTo-RigFile'
        'Copy-LayerMirror'
        'Export-LayerImage'
        'Export-LayerLedger'
        'Export-LayerReport'
        'Export-LayerSheet'
        'Format-LayerTree'
        'Get-Layer'
        'Get-LayerFile'
        'Get-LayerProfile'
        'Get-LayerStatus'
        'Import-LayerLedger'
        'Measure-LayerBudget'
        'Measure-LayerCover'
        'Measure-LayerDetail'
        'Measure-LayerStatus'
        'Measure-LayerSymmetry'
        'Move-Layer'
        'New-LayerFile'
        'New-LayerGroup'
        'New-LayerProfile'
        'Remove-Layer'
        'Rename-Layer'
        'Repair-LayerFile'
        'Resize-LayerFile'
        'Save-LayerFile'
        'Set-Layer'
        'Set-LayerCanvas'
        'Set-LayerOrder'
        'Set-LayerStatus'
        'Test-LayerFile'
        'Test-LayerProfile'
    )
    FunctionsToExport = @()
    AliasesToExport = @()
    VariablesToExport = @()
    PrivateData = @{
        PSData = @{
            Tags = @('PSD', 'PSB', 'layers', 'art', 'rigging', 'batch', 'Windows', 'MacOS', 'Linux', 'PSEdition_Core', 'PSEdition_Desktop')
        }
    }
}
